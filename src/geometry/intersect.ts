import { boxOf, overlay, ringsNear, ringsOf } from './overlay.ts';
import type { Shape } from './Shape.ts';

/**
 * What two sets of shapes have in common, as connected shapes in whole ticks. Slivers thinner than two
 * ticks are dropped.
 *
 * @example intersect([{outer: [[0, 0], [9, 0], [9, 9], [0, 9]], holes: []}], [{outer: [[5, 5], [20, 5], [20, 20], [5, 20]], holes: []}]) //=> [{outer: [[5, 5], [9, 5], [9, 9], [5, 9]], holes: []}]
 */
export function intersect(a: readonly Shape[], b: readonly Shape[]): Shape[] {
  const nearA = ringsNear(ringsOf(a), boxOf(b));
  const nearB = ringsNear(ringsOf(b), boxOf(a));
  return nearA.length === 0 || nearB.length === 0 ? [] : overlay('intersect', nearA, nearB);
}
