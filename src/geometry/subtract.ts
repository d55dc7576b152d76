import { boxOf, overlay, ringsNear, ringsOf } from './overlay.ts';
import type { Shape } from './Shape.ts';

/**
 * What is left of a set of shapes when another set is taken away, as connected shapes in whole ticks.
 * Slivers thinner than two ticks are dropped.
 *
 * @example subtract([{outer: [[0, 0], [9, 0], [9, 9], [0, 9]], holes: []}], [{outer: [[3, 0], [6, 0], [6, 9], [3, 9]], holes: []}]).length //=> 2
 */
export function subtract(a: readonly Shape[], b: readonly Shape[]): Shape[] {
  return a.length === 0 ? [] : overlay('subtract', ringsOf(a), ringsNear(ringsOf(b), boxOf(a)));
}
