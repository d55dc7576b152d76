import { textWidth } from '../drawing/index.ts';

/** What stands under the drawing of a set-out: the check with the first tile in large type, and how lines and joints lie. */
export interface SetOutWords {
  readonly check: string;
  readonly first: string;
  readonly middle: string;
}

/** Type in points, and how much wider words are printed at most than they are reckoned, as lines break at spaces. */
const POINTS = { large: 16, text: 11 } as const;
const WIDER = 1.05;
/** A line of each type, and what stands round them; a box and a swatch; in mm. */
const MM = { large: 6.8, text: 5.1, round: 4, box: 8, swatch: 12 } as const;

/** The least that is kept free, in mm: what nearly every set-out needs. */
const LEAST_MM = 22;

/**
 * How high the words under the drawing stand on a page so wide, in mm: as many lines as they take by the table of widths.
 *
 * @example setOutWordsMm({ check: '30 in', first: 'K1-1', middle: 'Snap in the order of the numbers.' }, 180) //=> 22
 */
export function setOutWordsMm({ check, first, middle }: SetOutWords, widthMm: number): number {
  const lines = (words: string, points: number, more = 0) =>
    Math.max(1, Math.ceil((textWidth(words, points, 700) * WIDER + more) / widthMm));
  const large = lines(`${check} · ${first}`, POINTS.large, MM.box + MM.swatch) * MM.large;
  return Math.max(LEAST_MM, large + lines(middle, POINTS.text) * MM.text + MM.round);
}
