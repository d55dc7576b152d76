import type { Ring } from './Ring.ts';

/** Steps of up to this many ticks come from rounding where two strips meet at less than a degree. */
const JOG = 2;

/**
 * A ring without the steps of a tick or two that rounding leaves where edges meet at a very flat angle.
 *
 * @example withoutJogs([[0, 0], [500, 0], [500, 1], [900, 40], [900, 900]]) //=> [[0, 0], [500, 0], [900, 40], [900, 900]]
 */
export function withoutJogs(ring: Ring): Ring {
  return ring.filter(([x, y], i) => {
    const [u, v] = ring[(i + ring.length - 1) % ring.length]!;
    return Math.max(Math.abs(x - u), Math.abs(y - v)) > JOG;
  });
}
