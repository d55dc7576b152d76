import { mitreBetween } from './mitreBetween.ts';
import type { Ring } from './Ring.ts';
import type { Shape } from './Shape.ts';
import { side } from './side.ts';
import { leftOf } from './unitAlong.ts';

/**
 * What lies within a given depth on the left of each edge of a ring: a rectangle along edge i (from point
 * i to the next) of depth `depths[i]`, and at each corner that turns right a mitre that closes the wedge
 * between two rectangles. The pieces overlap; corners are whole ticks. A depth of 0 gives no rectangle.
 *
 * @example stripsAlong([[0, 0], [9, 0], [9, 9], [0, 9]], [2, 0, 0, 0]) //=> [{outer: [[0, 0], [9, 0], [9, 2], [0, 2]], holes: []}]
 */
export function stripsAlong(ring: Ring, depths: readonly number[]): Shape[] {
  const n = ring.length;
  const rings: Ring[] = [];
  for (let i = 0; i < n; i++) {
    const [a, b, c] = [ring[i]!, ring[(i + 1) % n]!, ring[(i + 2) % n]!];
    const [depth, next] = [depths[i] ?? 0, depths[(i + 1) % n] ?? 0];
    if (depth > 0) rings.push([a, b, leftOf(a, b, b, depth), leftOf(a, b, a, depth)]);
    if (depth > 0 && next > 0 && side(a, b, c) < 0) rings.push(mitreBetween(a, b, c, depth, next));
  }
  return rings.map((outer) => ({ outer, holes: [] }));
}
