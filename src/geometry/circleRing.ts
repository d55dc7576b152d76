import type { Point } from './Point.ts';
import type { Ring } from './Ring.ts';

/**
 * A circle as a counter-clockwise ring of whole ticks that holds the circle's own area, no part of it
 * farther than `tolerance` ticks (and the half tick of rounding) from the circle. The number of its
 * points is a multiple of four, and it starts at the right.
 *
 * @example circleRing([0, 0], 5, 5) //=> [[6, 0], [0, 6], [-6, 0], [0, -6]]
 */
export function circleRing(centre: Point, radius: number, tolerance = 1): Ring {
  const least = Math.PI * Math.sqrt(radius / (3 * tolerance));
  const count = 4 * Math.max(1, Math.ceil(least / 4));
  const step = (2 * Math.PI) / count;
  const reach = radius * Math.sqrt(step / Math.sin(step));
  return Array.from({ length: count }, (_, i) => [
    Math.round(centre[0] + reach * Math.cos(i * step)) + 0,
    Math.round(centre[1] + reach * Math.sin(i * step)) + 0,
  ]);
}
