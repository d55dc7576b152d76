import type { Ring } from './Ring.ts';
import { ringArea } from './ringArea.ts';
import { stripsAlong } from './stripsAlong.ts';
import { unite } from './unite.ts';

/**
 * A counter-clockwise ring grown outwards, edge i (from point i to the next) by `gaps[i]` ticks, its
 * corners mitred. What closes up inside a hollow is filled.
 *
 * @example outsetByEdge([[0, 0], [9, 0], [9, 9], [0, 9]], [1, 2, 3, 4]) //=> [[-4, -1], [11, -1], [11, 12], [-4, 12]]
 */
export function outsetByEdge(ring: Ring, gaps: readonly number[]): Ring {
  const n = ring.length;
  // Walked the other way, outside is on the left, and edge i is the one that was n - 2 - i.
  const backwards = [...ring].reverse();
  const depths = backwards.map((_, i) => gaps[(2 * n - 2 - i) % n] ?? 0);
  const grown = unite([{ outer: ring, holes: [] }, ...stripsAlong(backwards, depths)]);
  return grown.map((shape) => shape.outer).sort((a, b) => ringArea(b) - ringArea(a))[0] ?? ring;
}
