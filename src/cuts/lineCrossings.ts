import type { Ring } from '../geometry/index.ts';
import type { Ticks } from '../measure/index.ts';

/** Where a straight line meets an edge of a ring: the place along the line, and the edge's index. */
export interface Crossing {
  readonly at: Ticks;
  readonly edge: number;
}

/**
 * Places, rounded to ticks and in order, where the line with `ring`'s other coordinate at `level` crosses a ring. The line must
 * miss every corner: between whole ticks it does.
 *
 * @param axis 0 for a line along x at y = level, 1 for a line along y at x = level.
 * @example lineCrossings([[0, 0], [8, 0], [8, 4], [0, 4]], 0, 1.5) //=> [{ at: 0, edge: 3 }, { at: 8, edge: 1 }]
 */
export function lineCrossings(ring: Ring, axis: 0 | 1, level: number): Crossing[] {
  const other = axis === 0 ? 1 : 0;
  const found: Crossing[] = [];
  for (let edge = 0; edge < ring.length; edge++) {
    const [p, q] = [ring[edge]!, ring[(edge + 1) % ring.length]!];
    if (p[other] > level === q[other] > level) continue;
    const part = (level - p[other]) / (q[other] - p[other]);
    found.push({ at: Math.round(p[axis] + part * (q[axis] - p[axis])) + 0, edge });
  }
  return found.sort((a, b) => a.at - b.at);
}
