import type { Point, Ring } from '../geometry/index.ts';
import type { Ticks } from '../measure/index.ts';

/**
 * A tile lying along x with its lower left corner at `at`, counter-clockwise from that corner; ticks.
 *
 * @example tileRing([0, 0], 600, 300) //=> [[0, 0], [600, 0], [600, 300], [0, 300]]
 */
export function tileRing([x, y]: Point, length: Ticks, width: Ticks): Ring {
  return [
    [x, y],
    [x + length, y],
    [x + length, y + width],
    [x, y + width],
  ];
}
