import { distancePointSegment, type Point, type Ring, whereInRing } from '../geometry/index.ts';

/** A point this near to the outline still counts as on the floor: the tape's slack and the room's own correction, an inch. */
const slack = 8128;

/**
 * Whether a point lies within an outline, or no more than an inch outside it; ticks.
 *
 * @example onFloor([-8000, 5], [[0, 0], [80000, 0], [80000, 80000], [0, 80000]]) //=> true
 * @example onFloor([-9000, 5], [[0, 0], [80000, 0], [80000, 80000], [0, 80000]]) //=> false
 */
export function onFloor(point: Point, outline: Ring): boolean {
  if (whereInRing(point, outline) !== 'outside') return true;
  return outline.some((a, i) => distancePointSegment(point, a, outline[(i + 1) % outline.length]!) <= slack);
}
