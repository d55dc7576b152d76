import type { Point } from './Point.ts';

/**
 * The direction from a to b, one long; of two equal points [0, 0].
 *
 * @example unitAlong([0, 0], [30, 40]) //=> [0.6, 0.8]
 */
export function unitAlong(a: Point, b: Point): Point {
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  return length === 0 ? [0, 0] : [(b[0] - a[0]) / length, (b[1] - a[1]) / length];
}

/**
 * The point at a distance to the left of a foot on the line from a to b, in whole ticks.
 *
 * @example leftOf([0, 0], [30, 40], [0, 0], 10) //=> [-8, 6]
 */
export function leftOf(a: Point, b: Point, foot: Point, distance: number): Point {
  const [ux, uy] = unitAlong(a, b);
  return [Math.round(foot[0] - uy * distance), Math.round(foot[1] + ux * distance)];
}
