import type { Point } from './Point.ts';
import type { Shape } from './Shape.ts';
import { whereInRing } from './whereInRing.ts';

/**
 * Whether a point lies in a shape or on the edge of it or of a hole.
 *
 * @example pointInShape([3, 3], {outer: [[0, 0], [9, 0], [9, 9], [0, 9]], holes: [[[2, 2], [2, 4], [4, 4], [4, 2]]]}) //=> false
 */
export function pointInShape(point: Point, shape: Shape): boolean {
  if (whereInRing(point, shape.outer) === 'outside') return false;
  return shape.holes.every((hole) => whereInRing(point, hole) !== 'inside');
}
