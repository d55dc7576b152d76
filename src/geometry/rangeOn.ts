import type { Ring } from './Ring.ts';

/**
 * The lowest and the highest place of a ring on an axis, 0 for x and 1 for y.
 *
 * @example rangeOn([[1, 7], [4, 2], [3, 9]], 1) //=> [2, 9]
 */
export function rangeOn(ring: Ring, axis: 0 | 1): readonly [number, number] {
  const all = ring.map((point) => point[axis]);
  return [Math.min(...all), Math.max(...all)];
}
