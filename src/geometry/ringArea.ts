import type { Ring } from './Ring.ts';
import { side } from './side.ts';

/**
 * The area of a ring in square ticks: positive counter-clockwise, negative clockwise.
 *
 * @example ringArea([[0, 0], [4, 0], [4, 3], [0, 3]]) //=> 12
 * @example ringArea([[0, 3], [4, 3], [4, 0], [0, 0]]) //=> -12
 */
export function ringArea(ring: Ring): number {
  let twice = 0;
  // Fans out from the first point, so that a ring far from the origin loses no digits.
  for (let i = 2; i < ring.length; i++) twice += side(ring[0]!, ring[i - 1]!, ring[i]!);
  return twice / 2;
}
