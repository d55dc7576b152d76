import type { Point } from './Point.ts';
import type { Ring } from './Ring.ts';

/**
 * The same ring begun at its lowest point, the leftmost of several, so that equal rings are equal lists
 * wherever they came from.
 *
 * @example fromLowest([[4, 4], [0, 4], [0, 0], [4, 0]]) //=> [[0, 0], [4, 0], [4, 4], [0, 4]]
 */
export function fromLowest(ring: Ring): Ring {
  let low = 0;
  for (let i = 1; i < ring.length; i++) if (byHeight(ring[i]!, ring[low]!) < 0) low = i;
  return low === 0 ? ring : [...ring.slice(low), ...ring.slice(0, low)];
}

/**
 * The order of points from low to high and, at one height, from left to right; for `sort`.
 *
 * @example byHeight([4, 0], [0, 1]) < 0 //=> true
 */
export function byHeight(a: Point, b: Point): number {
  return a[1] - b[1] || a[0] - b[0];
}
