import type { Point } from './Point.ts';
import type { Ring } from './Ring.ts';
import { whereInRing } from './whereInRing.ts';

/**
 * Whether a point lies inside a ring or on it.
 *
 * @example pointInRing([4, 2], [[0, 0], [4, 0], [4, 4], [0, 4]]) //=> true
 */
export function pointInRing(point: Point, ring: Ring): boolean {
  return whereInRing(point, ring) !== 'outside';
}
