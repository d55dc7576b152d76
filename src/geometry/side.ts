import type { Point } from './Point.ts';

/**
 * On which side of the line from a to b a point lies: more than 0 on the left, 0 on the line, less on
 * the right. Exact for whole ticks up to 50 m apart; twice the area of the triangle in square ticks.
 * No other file compares a cross product with zero.
 *
 * @example side([0, 0], [10, 0], [5, 1]) //=> 10
 * @example side([0, 0], [10, 0], [20, 0]) //=> 0
 */
export function side(a: Point, b: Point, c: Point): number {
  return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
}
