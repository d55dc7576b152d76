import { distancePoints } from './distance.ts';
import type { Ring } from './Ring.ts';

/**
 * The length of a ring, once round, in ticks.
 *
 * @example ringLength([[0, 0], [3, 0], [3, 4]]) //=> 12
 */
export function ringLength(ring: Ring): number {
  let length = 0;
  let a = ring[ring.length - 1]!;
  for (const b of ring) {
    length += distancePoints(a, b);
    a = b;
  }
  return length;
}
