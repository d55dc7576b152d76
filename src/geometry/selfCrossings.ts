import type { Ring } from './Ring.ts';
import { segmentsMeet } from './segmentsMeet.ts';
import { side } from './side.ts';

/** Two edges of one ring by number; edge i runs from point i to the next. */
export interface Crossing {
  readonly i: number;
  readonly j: number;
}

/**
 * The pairs of edges that cross, touch or lie on one another where they should not: edges that are not
 * neighbours and share a point, and neighbours of which one runs back over the other.
 *
 * @example selfCrossings([[0, 0], [4, 4], [4, 0], [0, 4]]) //=> [{i: 0, j: 2}]
 * @example selfCrossings([[0, 0], [4, 0], [4, 4], [0, 4]]) //=> []
 */
export function selfCrossings(ring: Ring): Crossing[] {
  const n = ring.length;
  const found: Crossing[] = [];
  for (let i = 0; i < n; i++) {
    for (let j = i + 1; j < n; j++) if (edgesClash(ring, i, j)) found.push({ i, j });
  }
  return found;
}

function edgesClash(ring: Ring, i: number, j: number): boolean {
  const n = ring.length;
  if (j === i + 1) return runsBack(ring, i);
  if (i === 0 && j === n - 1) return runsBack(ring, j);
  return segmentsMeet(ring[i]!, ring[i + 1]!, ring[j]!, ring[(j + 1) % n]!);
}

function runsBack(ring: Ring, i: number): boolean {
  const [a, b, c] = [0, 1, 2].map((k) => ring[(i + k) % ring.length]!);
  const ahead = (b![0] - a![0]) * (c![0] - b![0]) + (b![1] - a![1]) * (c![1] - b![1]);
  return side(a!, b!, c!) === 0 && ahead <= 0;
}
