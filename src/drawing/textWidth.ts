import { narrowFigures, textWidths } from './textWidths.ts';

/** Millimetres of a typographic point. */
export const mmPerPoint = 25.4 / 72;

/** Height of capitals and figures, and how far a descender hangs, as shares of the type size (`OS/2` table of the font). */
export const capHeight = 0.668;
export const descent = 0.2;

/** A character that the table does not know is taken as wide as an m, so that nothing is ever set too tight. */
const unknownWidth = 900;

const lookUp: Readonly<Record<400 | 700, ReadonlyMap<string, number>>> = {
  400: byCharacter(400),
  700: byCharacter(700),
};

function byCharacter(weight: 400 | 700): ReadonlyMap<string, number> {
  return new Map(textWidths[weight].flatMap(([width, characters]) => [...characters].map((c) => [c, width])));
}

function characterWidth(
  character: string,
  table: ReadonlyMap<string, number>,
  narrow?: readonly number[],
): number {
  if (narrow && character >= '0' && character <= '9') return narrow[Number(character)]!;
  return table.get(character) ?? table.get(character.normalize('NFD')[0] ?? character) ?? unknownWidth;
}

/**
 * Width in mm of one line of text set in the sheets' typeface, with tabular figures or with narrow ones.
 *
 * @example textWidth('1111', 10, 400) //=> 8.918
 */
export function textWidth(text: string, points: number, weight: 400 | 700 = 400, narrow = false): number {
  const digits = narrow ? narrowFigures[weight] : undefined;
  const table = lookUp[weight];
  let units = 0;
  for (const character of text) units += characterWidth(character, table, digits);
  return Math.round(units * points * mmPerPoint) / 1000;
}
