import type { Ring } from './Ring.ts';
import { side } from './side.ts';

/**
 * Whether a counter-clockwise ring turns left or runs straight on at each of its points, once round.
 *
 * @example isConvex([[0, 0], [4, 0], [4, 4], [0, 4]]) //=> true
 * @example isConvex([[0, 0], [4, 0], [1, 1], [0, 4]]) //=> false
 */
export function isConvex(ring: Ring): boolean {
  const n = ring.length;
  let falls = 0;
  for (let i = 0; i < n; i++) {
    const [a, b, c] = [ring[i]!, ring[(i + 1) % n]!, ring[(i + 2) % n]!];
    if (side(a, b, c) < 0) return false;
    // A ring that winds once starts to go down once; a star that always turns left does so more often.
    if (rises(a, b) && !rises(b, c)) falls++;
  }
  return n > 2 && falls === 1;
}

function rises(a: readonly [number, number], b: readonly [number, number]): boolean {
  return b[1] > a[1] || (b[1] === a[1] && b[0] > a[0]);
}
