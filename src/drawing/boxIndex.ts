import type { Box } from './boxes.ts';

/** Boxes by where they lie: of many, only those near a place are looked at. */
export interface BoxIndex {
  readonly add: (box: Box) => void;
  /** Whether something holds of one of the boxes that lie near `round`; one is asked of more than once where it is large. */
  readonly some: (round: Box, isSo: (box: Box) => boolean) => boolean;
}

/** Side of a cell in mm: about a name's length. */
const cell = 8;
/** A box over more cells is asked of wherever a place lies. */
const mostCells = 256;
const shift = 1 << 20;

/** The column or row that a place lies in. */
const cellAt = (mm: number) => Math.floor(mm / cell);

/**
 * Boxes that are asked of by place.
 *
 * @example boxIndex([{ left: 0, bottom: 0, right: 2, top: 2 }]).some({ left: 1, bottom: 1, right: 9, top: 9 }, () => true) //=> true
 * @example boxIndex([{ left: 0, bottom: 0, right: 2, top: 2 }]).some({ left: 90, bottom: 1, right: 99, top: 9 }, () => true) //=> false
 */
export function boxIndex(boxes: readonly Box[]): BoxIndex {
  const cells = new Map<number, Box[]>();
  const large: Box[] = [];
  const add = (box: Box) => {
    const [left, right, low, high] = [
      cellAt(box.left),
      cellAt(box.right),
      cellAt(box.bottom),
      cellAt(box.top),
    ];
    if (!((right - left + 1) * (high - low + 1) <= mostCells)) {
      large.push(box);
      return;
    }
    for (let column = left; column <= right; column += 1)
      for (let row = low; row <= high; row += 1) {
        const key = column * shift + row;
        const there = cells.get(key);
        if (there) there.push(box);
        else cells.set(key, [box]);
      }
  };
  for (const box of boxes) add(box);
  const some = (round: Box, isSo: (box: Box) => boolean): boolean => {
    if (large.some(isSo)) return true;
    const [right, low, high] = [cellAt(round.right), cellAt(round.bottom), cellAt(round.top)];
    for (let column = cellAt(round.left); column <= right; column += 1)
      for (let row = low; row <= high; row += 1) {
        const there = cells.get(column * shift + row);
        if (there?.some(isSo)) return true;
      }
    return false;
  };
  return { add, some };
}
