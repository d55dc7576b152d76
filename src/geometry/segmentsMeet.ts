import type { Point } from './Point.ts';
import { side } from './side.ts';

/**
 * Whether two closed segments share at least one point; exact for whole ticks.
 *
 * @example segmentsMeet([0, 0], [4, 4], [0, 4], [4, 0]) //=> true
 * @example segmentsMeet([0, 0], [4, 0], [4, 0], [9, 9]) //=> true
 * @example segmentsMeet([0, 0], [4, 0], [5, 0], [9, 0]) //=> false
 */
export function segmentsMeet(a: Point, b: Point, c: Point, d: Point): boolean {
  if (!spansMeet(a, b, c, d, 0) || !spansMeet(a, b, c, d, 1)) return false;
  return apart(side(a, b, c), side(a, b, d)) && apart(side(c, d, a), side(c, d, b));
}

function spansMeet(a: Point, b: Point, c: Point, d: Point, axis: 0 | 1): boolean {
  return (
    Math.max(a[axis], b[axis]) >= Math.min(c[axis], d[axis]) &&
    Math.max(c[axis], d[axis]) >= Math.min(a[axis], b[axis])
  );
}

function apart(one: number, other: number): boolean {
  return !(one > 0 && other > 0) && !(one < 0 && other < 0);
}
