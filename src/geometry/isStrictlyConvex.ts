import { isConvex } from './isConvex.ts';
import type { Ring } from './Ring.ts';
import { side } from './side.ts';

/**
 * Whether a ring is convex and runs straight on at none of its points: it is its own hull then.
 *
 * @example isStrictlyConvex([[0, 0], [9, 0], [9, 9], [0, 9]]) //=> true
 * @example isStrictlyConvex([[0, 0], [4, 0], [9, 0], [9, 9]]) //=> false
 */
export function isStrictlyConvex(ring: Ring): boolean {
  return isConvex(ring) && ring.every((b, i) => side(ring.at(i - 1)!, b, ring[i + 1] ?? ring[0]!) !== 0);
}
