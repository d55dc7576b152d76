import { overlay, ringsOf } from './overlay.ts';
import type { Shape } from './Shape.ts';

/**
 * Shapes that overlap or share an edge made into one, as connected shapes in whole ticks.
 *
 * @example unite([{outer: [[0, 0], [4, 0], [4, 4], [0, 4]], holes: []}, {outer: [[4, 0], [9, 0], [9, 4], [4, 4]], holes: []}]).length //=> 1
 */
export function unite(shapes: readonly Shape[]): Shape[] {
  return shapes.length === 0 ? [] : overlay('unite', ringsOf(shapes), []);
}
