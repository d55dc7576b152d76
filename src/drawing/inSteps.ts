/** A drawing with the lines of all its paths written in steps. */
export const drawnInSteps = (svg: string): string =>
  svg.replace(/ d="([^"]*)"/g, (_, d: string) => ` d="${inSteps(d)}"`);

/** Whole hundredths of a millimetre, finer than a printer's dots, so that steps add up to what they came from. */
const perMm = 100;

type Whole = readonly [number, number];

interface Command {
  readonly letter: string;
  readonly numbers: readonly number[];
  readonly to: Whole;
}

function commandsOf(d: string): readonly Command[] {
  return [...d.matchAll(/([MLAZ])([^MLAZ]*)/g)].map(([, letter, text]) => {
    const numbers = text === '' ? [] : text!.split(',').map(Number);
    const [x = 0, y = 0] = numbers.slice(-2).map((number) => Math.round(number * perMm));
    return { letter: letter!, numbers, to: [x, y] };
  });
}

/** A step with the letter that SVG has for it: of a straight one only that which isn't nought. */
function stepOf({ letter, numbers }: Command, across: number, down: number): readonly [string, ...number[]] {
  if (letter === 'M') return ['m', across, down];
  if (letter === 'A') return ['a', ...numbers.slice(0, -2), across, down];
  if (across === 0) return ['v', down];
  return down === 0 ? ['h', across] : ['l', across, down];
}

/** A number as short as SVG allows after another: no nought before the point, a comma only where nothing else parts them. */
function short(number: number, before: string): string {
  const text = String(number).replace(/^(-?)0\./, '$1.');
  const isParted = before === '' || text.startsWith('-') || (text.startsWith('.') && before.includes('.'));
  return isParted ? text : `,${text}`;
}

/** Writes steps one after the other; a letter that would come again is left out. */
function penOf(): {
  readonly put: (step: readonly [string, ...number[]]) => void;
  readonly text: () => string;
} {
  const parts: string[] = [];
  let [same, before] = ['', ''];
  return {
    put: ([letter, ...numbers]) => {
      if (letter !== same) {
        parts.push(letter);
        before = '';
      }
      for (const number of numbers) {
        before = short(number, before);
        parts.push(before);
      }
      same = letter === 'm' ? 'l' : letter;
    },
    text: () => parts.join(''),
  };
}

/**
 * The `d` of a path of absolute moves, lines and arcs, written shorter: each line as the step from the point before,
 * to a hundredth of a millimetre. Steps are taken between rounded points, so that none drifts. The first move counts from
 * the corner of the drawing.
 *
 * @example inSteps('M12.5,20L13.25,20.5L13,22ZM14,20L14,22') //=> 'm12.5,20,.75.5-.25,1.5zm1.5,0v2'
 */
export function inSteps(d: string): string {
  const pen = penOf();
  let [at, start]: [Whole, Whole] = [
    [0, 0],
    [0, 0],
  ];
  const commands = commandsOf(d);
  for (const [i, command] of commands.entries()) {
    const { letter, to } = command;
    if (letter === 'Z') {
      pen.put(['z']);
      at = start;
      continue;
    }
    const [across, down] = [(to[0] - at[0]) / perMm, (to[1] - at[1]) / perMm];
    if (letter === 'M') start = to;
    // The line that closes a ring is drawn by its last letter.
    const isClosing =
      letter === 'L' && commands[i + 1]?.letter === 'Z' && to[0] === start[0] && to[1] === start[1];
    if (isClosing || (letter !== 'M' && across === 0 && down === 0)) continue;
    pen.put(stepOf(command, across, down));
    at = to;
  }
  return pen.text();
}
