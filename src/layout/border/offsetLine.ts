import { type Point, unitAlong } from '../../geometry/index.ts';
import type { Ticks } from '../../measure/index.ts';

/** A line through a point, not rounded; the floor side of a wall is on its left. */
export interface OffsetLine {
  readonly at: Point;
  readonly along: Point;
}

/** Two lines whose directions differ by less than this, about a degree, have no corner worth the name. */
const STRAIGHT = 0.02;

/**
 * The line on the left of a way from one point to another, so far away.
 *
 * @example offsetLine({ from: [0, 0], to: [30, 40] }, 10) //=> { at: [-8, 6], along: [0.6, 0.8] }
 */
export function offsetLine({ from, to }: { from: Point; to: Point }, depth: Ticks): OffsetLine {
  const along = unitAlong(from, to);
  return { at: movedLeft(from, along, depth), along };
}

/** A point moved square to the left of a direction. */
export function movedLeft([x, y]: Point, [ux, uy]: Point, depth: number): Point {
  return [x - uy * depth, y + ux * depth];
}

/** Whether two lines run on in nearly one direction, so that they make no corner. */
export function runOn({ along: [ux, uy] }: OffsetLine, { along: [vx, vy] }: OffsetLine): boolean {
  return Math.abs(ux * vy - uy * vx) < STRAIGHT;
}

/**
 * Where two lines meet; of two that run on in nearly one direction, where the second one begins.
 *
 * @example whereMeet({ at: [0, 5], along: [1, 0] }, { at: [7, 0], along: [0, 1] }) //=> [7, 5]
 */
export function whereMeet(one: OffsetLine, other: OffsetLine): Point {
  const [[ux, uy], [vx, vy]] = [one.along, other.along];
  const turned = ux * vy - uy * vx;
  if (runOn(one, other)) return other.at;
  const [dx, dy] = [other.at[0] - one.at[0], other.at[1] - one.at[1]];
  const t = (dx * vy - dy * vx) / turned;
  return [one.at[0] + ux * t, one.at[1] + uy * t];
}

/** A point in whole ticks, without a minus before 0. */
export function inTicks([x, y]: Point): Point {
  return [Math.round(x) + 0, Math.round(y) + 0];
}
