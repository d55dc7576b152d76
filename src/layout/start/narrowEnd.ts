import { isConvex, type Ring } from '../../geometry/index.ts';
import type { Ticks } from '../../measure/index.ts';

/** An edge that runs off an axis by no more than this share of its length is along it. */
const LEAN = 0.2;

/**
 * The size of a piece on an axis at its narrow end, where a wall that leans cuts it narrower at one end than at the other; undefined
 * where the piece is no four-sided one with its sides along the axes.
 *
 * @param axis 0 along x, 1 along y.
 * @example narrowEnd([[0, 0], [500, 0], [480, 900], [0, 900]], 0) //=> 480
 * @example narrowEnd([[0, 0], [500, 0], [500, 500], [200, 900], [0, 900]], 0) //=> undefined
 */
export function narrowEnd(ring: Ring, axis: 0 | 1): Ticks | undefined {
  if (!isConvex(ring)) return undefined;
  const ends = { '1': 0, '-1': 0 };
  for (const [i, from] of ring.entries()) {
    const to = ring[(i + 1) % ring.length]!;
    const [along, across] = [to[axis] - from[axis], to[1 - axis]! - from[1 - axis]!];
    if (Math.abs(across) <= LEAN * Math.abs(along)) ends[along > 0 ? '1' : '-1'] += Math.abs(along);
    else if (Math.abs(along) > LEAN * Math.abs(across)) return undefined;
  }
  const narrow = Math.min(ends['1'], ends['-1']);
  return narrow > 0 ? narrow : undefined;
}
