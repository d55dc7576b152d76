import type { Ring } from './Ring.ts';
import { side } from './side.ts';

/**
 * Whether a ring turns left at each of its points, nowhere running straight on, and once round in all: it is its own hull then and touches
 * itself nowhere, as most pieces of tile do.
 *
 * @example isStrictlyConvex([[0, 0], [9, 0], [9, 9], [0, 9]]) //=> true
 * @example isStrictlyConvex([[0, 0], [9, 0], [2, 2], [0, 9]]) //=> false
 * @example isStrictlyConvex([[0, 0], [4, 0], [9, 0], [9, 9]]) //=> false
 */
export function isStrictlyConvex(ring: Ring): boolean {
  const n = ring.length;
  let tops = 0;
  for (let i = 0; i < n; i++) {
    const [a, b, c] = [ring[i]!, ring[(i + 1) % n]!, ring[(i + 2) % n]!];
    if (side(a, b, c) <= 0) return false;
    // A ring that goes round twice comes to a highest corner twice.
    if (b[1] >= a[1] && b[1] > c[1]) tops++;
  }
  return n >= 3 && tops === 1;
}
