import { pageSpace } from './drawingSpace.ts';

/** Heights on the list by tile in mm: the line over it, headings of zones, a part of a tile, what runs over its line, the tile's rule. */
const MM = { rule: 7, heading: 10, part: 7.06, over: 5, tile: 1.4 } as const;
/** What the second language of the crew adds to the line over the list, and to the heading of a zone. */
const SECOND_MM = { rule: 4, heading: 5 } as const;
/** How much lower parts are where that saves a page, in mm. */
const LOWER = 1;
/** Columns of the list, and how many letters stand on a line of one: of a part's box and number, a setting, the word before the next, a later zone. */
const COLUMNS = 3;
const LETTERS = { line: 25, part: 7, setting: 7, next: 3, later: 8 } as const;
/** A last page that is guessed to be filled to less, as a share, may hold a few lines only; and so may the page after one so full. */
const LITTLE = 0.25;
const FULL = 0.96;

interface TileLine {
  readonly parts: readonly {
    readonly piece: string;
    readonly settings: readonly unknown[];
    readonly later: number;
  }[];
}

function partHeight({ piece, settings, later }: TileLine['parts'][number], lower: number): number {
  const letters =
    LETTERS.part +
    piece.length +
    settings.length * LETTERS.setting +
    Math.max(0, settings.length - 1) * LETTERS.next +
    (later ? LETTERS.later : 0);
  return MM.part - lower + (Math.ceil(letters / LETTERS.line) - 1) * MM.over;
}

/**
 * How a list by tile stands on its pages; `zones` are its tiles zone by zone. Its lines are lower where that saves a page,
 * and its end stays `together` where its last page may hold a few lines only. Heights are rough.
 */
export function tilePages(
  zones: readonly (readonly TileLine[])[],
  { paper, crew }: { readonly paper: 'letter' | 'a4'; readonly crew: readonly unknown[] },
): { readonly low: boolean; readonly together: boolean } {
  const more = crew.length > 1 ? SECOND_MM : { rule: 0, heading: 0 };
  const zoneHeight = (tiles: readonly TileLine[], lower: number) => {
    const heights = tiles.map(({ parts }) =>
      parts.reduce<number>((sum, part) => sum + partHeight(part, lower), MM.tile),
    );
    return MM.heading + more.heading + heights.reduce((sum, height) => sum + height, MM.part) / COLUMNS;
  };
  const pages = (lower: number) =>
    zones.reduce<number>((sum, tiles) => sum + zoneHeight(tiles, lower), MM.rule + more.rule) /
    pageSpace(paper, 'portrait').heightMm;
  const low = Math.ceil(pages(LOWER)) < Math.ceil(pages(0));
  const filled = pages(low ? LOWER : 0);
  const last = filled % 1;
  return { low, together: last > FULL || (filled > 1 && last < LITTLE) };
}
