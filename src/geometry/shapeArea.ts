import { ringArea } from './ringArea.ts';
import type { Shape } from './Shape.ts';

/**
 * The area of a shape in square ticks, holes taken off.
 *
 * @example shapeArea({outer: [[0, 0], [4, 0], [4, 3], [0, 3]], holes: [[[1, 1], [1, 2], [2, 2], [2, 1]]]}) //=> 11
 */
export function shapeArea(shape: Shape): number {
  return shape.holes.reduce((area, hole) => area - Math.abs(ringArea(hole)), Math.abs(ringArea(shape.outer)));
}
