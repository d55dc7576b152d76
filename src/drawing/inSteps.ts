import { decimals } from './roundMm.ts';

/** A drawing with the lines of all its paths written in steps. */
export const drawnInSteps = (svg: string): string =>
  svg.replace(/ d="([^"]*)"/g, (_, d: string) => ` d="${inSteps(d)}"`);

/** Whole thousandths of a millimetre, so that steps add up to what they came from. */
const perMm = 10 ** decimals;

type Whole = readonly [number, number];

/** A step as short as SVG allows: no nought before the point, no comma before a minus. */
function stepText([x, y]: Whole): string {
  const [across, down] = [x, y].map((value) => String(value / perMm).replace(/^(-?)0\./, '$1.'));
  return down!.startsWith('-') ? `${across}${down}` : `${across},${down}`;
}

/** The point at which a command with absolute numbers ends. */
function endOf(numbers: string): Whole {
  const [x, y] = numbers.split(',').slice(-2);
  return [Math.round(Number(x) * perMm), Math.round(Number(y) * perMm)];
}

/**
 * The `d` of a path of absolute moves, lines and arcs, written shorter: each line as the step from the point before.
 * It draws the same to the last decimal, for steps are taken between rounded points.
 *
 * @example inSteps('M12.5,20L13.25,20.5L13,22Z') //=> 'M12.5,20l.75,.5-.25,1.5z'
 */
export function inSteps(d: string): string {
  let at: Whole = [0, 0];
  let before = '';
  let text = '';
  for (const [, command, numbers] of d.matchAll(/([MLAZ])([^MLAZ]*)/g)) {
    if (command === 'Z') text += 'z';
    else {
      const to = endOf(numbers!);
      const step = stepText([to[0] - at[0], to[1] - at[1]]);
      if (command !== 'L') text += `${command}${numbers}`;
      else text += before === 'L' ? step.replace(/^(?!-)/, ' ') : `l${step}`;
      at = to;
    }
    before = command!;
  }
  return text;
}
