import type { Point } from './Point.ts';
import { segmentsMeet } from './segmentsMeet.ts';
import { side } from './side.ts';

/**
 * The point in which segment a–b meets segment c–d, not rounded; null where they do not meet or lie on
 * one line.
 *
 * @example segmentIntersection([0, 0], [4, 4], [0, 2], [4, 2]) //=> [2, 2]
 * @example segmentIntersection([0, 0], [4, 0], [2, 0], [9, 0]) //=> null
 */
export function segmentIntersection(a: Point, b: Point, c: Point, d: Point): Point | null {
  if (!segmentsMeet(a, b, c, d)) return null;
  const [s, t] = [side(c, d, a), side(c, d, b)];
  if (s === t) return null;
  const part = s / (s - t);
  return [a[0] + part * (b[0] - a[0]), a[1] + part * (b[1] - a[1])];
}
