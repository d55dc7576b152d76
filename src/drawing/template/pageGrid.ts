import type { Box } from '../boxes.ts';
import type { Space } from '../Drawing.ts';

/** How far neighbouring pages show the same, in mm. */
export const OVERLAP_MM = 10;

/** Pages that show a region together, row by row from the top left. */
export interface PageGrid {
  readonly columns: number;
  readonly rows: number;
  readonly windows: readonly Box[];
  /** Which of the windows are printed: those that show something of what is drawn. */
  readonly pages: readonly number[];
}

const count = (length: number, space: number): number =>
  Math.max(1, Math.ceil((length - OVERLAP_MM) / (space - OVERLAP_MM) - 1e-9));

/**
 * How many pages a region in mm takes at full size, each with its overlap.
 *
 * @example pagesFor({ widthMm: 300, heightMm: 150 }, { widthMm: 160, heightMm: 200 }) //=> 2
 */
export function pagesFor(region: Space, space: Space): number {
  return count(region.widthMm, space.widthMm) * count(region.heightMm, space.heightMm);
}

/**
 * Equal windows on a region, none larger than the space of a page, neighbours overlapping; `shows` says which are worth a page.
 *
 * @example pageGrid({ left: 0, bottom: 0, right: 300, top: 150 }, { widthMm: 160, heightMm: 200 }).windows //=> [{ left: 0, bottom: 0, right: 155, top: 150 }, { left: 145, bottom: 0, right: 300, top: 150 }]
 */
export function pageGrid(region: Box, space: Space, shows: (window: Box) => boolean = () => true): PageGrid {
  const [width, height] = [region.right - region.left, region.top - region.bottom];
  const [columns, rows] = [count(width, space.widthMm), count(height, space.heightMm)];
  const wide = (width + (columns - 1) * OVERLAP_MM) / columns;
  const high = (height + (rows - 1) * OVERLAP_MM) / rows;
  const windows = Array.from({ length: rows * columns }, (_, i): Box => {
    const left = region.left + (i % columns) * (wide - OVERLAP_MM);
    const top = region.top - Math.floor(i / columns) * (high - OVERLAP_MM);
    return { left, bottom: top - high, right: left + wide, top };
  });
  return { columns, rows, windows, pages: windows.flatMap((window, i) => (shows(window) ? [i] : [])) };
}
