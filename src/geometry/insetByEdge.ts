import type { Ring } from './Ring.ts';
import type { Shape } from './Shape.ts';
import { stripsAlong } from './stripsAlong.ts';
import { subtract } from './subtract.ts';

/**
 * A counter-clockwise outline with each edge drawn in by its own gap: edge i, from point i to the next,
 * by `gaps[i]` ticks. At a re-entrant corner the drawn-in lines meet in a mitre; where a straight run
 * changes its gap there is a step. May fall apart into several shapes, or leave none.
 *
 * @example insetByEdge([[0, 0], [90, 0], [90, 90], [0, 90]], [10, 20, 0, 5]) //=> [{outer: [[5, 10], [70, 10], [70, 90], [5, 90]], holes: []}]
 */
export function insetByEdge(outer: Ring, gaps: readonly number[]): Shape[] {
  return subtract([{ outer, holes: [] }], stripsAlong(outer, gaps));
}
