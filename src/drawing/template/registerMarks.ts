import type { Box } from '../boxes.ts';
import type { Mark, Spot } from '../Mark.ts';
import { path, text } from '../text.ts';
import { OVERLAP_MM, type PageGrid } from './pageGrid.ts';

/** Arms of a cross, and its letter's distance from it, in mm. */
const arm = 3.5;
const off = 5.5;

/** Two crosses a seam stand at these shares of its length. */
const shares = [0.25, 0.75];

/** `A` … `Z`, then `AA` … */
function letters(index: number): string {
  const last = String.fromCharCode(65 + (index % 26));
  return index < 26 ? last : letters(Math.floor(index / 26) - 1) + last;
}

/** A seam between two pages: where its middle runs, between what ends, and the number of its first letter. */
interface Seam {
  readonly level: boolean;
  readonly at: number;
  readonly from: number;
  readonly to: number;
  readonly first: number;
}

/** The seams of a page with those that are printed: the pages right and left of it, over and under it. Both pages of a seam give it the same letters. */
function seamsOf({ columns, rows, windows, pages }: PageGrid, page: number): readonly Seam[] {
  const [column, row] = [page % columns, Math.floor(page / columns)];
  const upright = rows * (columns - 1);
  const right = (of: number): Seam => {
    const { right: edge, bottom, top } = windows[of]!;
    const index = Math.floor(of / columns) * (columns - 1) + (of % columns);
    return { level: false, at: edge - OVERLAP_MM / 2, from: bottom, to: top, first: 2 * index };
  };
  const below = (of: number): Seam => {
    const { bottom: edge, left, right: end } = windows[of]!;
    return { level: true, at: edge + OVERLAP_MM / 2, from: left, to: end, first: 2 * (upright + of) };
  };
  const beside = [
    { there: column > 0, page: page - 1, seam: () => right(page - 1) },
    { there: column < columns - 1, page: page + 1, seam: () => right(page) },
    { there: row > 0, page: page - columns, seam: () => below(page - columns) },
    { there: row < rows - 1, page: page + columns, seam: () => below(page) },
  ];
  return beside.filter((one) => one.there && pages.includes(one.page)).map(({ seam }) => seam());
}

function seamMarks({ level, at, from, to, first }: Seam): readonly Mark[] {
  const place = (along: number, aside: number): Spot => (level ? [along, at + aside] : [at + aside, along]);
  return [
    path([place(from, 0), place(to, 0)], 'dimension'),
    ...shares.flatMap((share, i) => {
      const along = from + (to - from) * share;
      return [
        path([place(along - arm, 0), place(along + arm, 0)], 'register'),
        path([place(along, -arm), place(along, arm)], 'register'),
        text(place(along + off, 0), letters(first + i), { weight: 700, clear: 'all' }),
      ];
    }),
  ];
}

/** Crosses with letters on the seams of a page, and the line along which one sheet is cut before it is laid on the next. */
export function registerMarks(grid: PageGrid, page: number): readonly Mark[] {
  return seamsOf(grid, page).flatMap(seamMarks);
}

/** The window of a page without the strips that its neighbours show too. */
export function ownWindow({ columns, rows, windows }: PageGrid, page: number): Box {
  const { left, bottom, right, top } = windows[page]!;
  const [column, row] = [page % columns, Math.floor(page / columns)];
  return {
    left: column > 0 ? left + OVERLAP_MM : left,
    bottom: row < rows - 1 ? bottom + OVERLAP_MM : bottom,
    right: column < columns - 1 ? right - OVERLAP_MM : right,
    top: row > 0 ? top - OVERLAP_MM : top,
  };
}
