import { bounds, type Point, type Ring } from '../../geometry/index.ts';
import type { Ticks } from '../../measure/index.ts';

/** How a pattern repeats, and its tiles. */
interface Repeated {
  readonly a: Point;
  readonly b: Point;
  readonly tiles: readonly { readonly ring: Ring }[];
}

/** Rounding moves the tiles of a repeat by no more than this, in ticks. */
const ROUNDING = 2;

/** Courses that step on come round again after so many at most. */
const MOST_ROUND = 12;

/** How far each other kind of course of a running bond is ahead of the first; none of other patterns, or where courses step on without end. */
function shiftsOf({ a, b, tiles }: Repeated, joint: Ticks): readonly Ticks[] {
  const boxes = tiles.map(({ ring }) => bounds(ring));
  const [first] = boxes;
  if (!first || a[1] !== 0 || tiles.some(({ ring }) => ring.length !== 4)) return [];
  const [size, high] = [first.maxX - first.minX, first.maxY - first.minY];
  const alike = boxes.every(
    ({ minX, maxX, minY, maxY }) =>
      Math.abs(maxX - minX - size) <= ROUNDING && Math.abs(maxY - minY - high) <= ROUNDING,
  );
  if (Math.abs(a[0] - size - joint) > ROUNDING || !alike) return [];
  const steps = Array.from({ length: MOST_ROUND }, (_, i) => i + 1);
  const off = (by: number) => Math.abs(by - Math.round(by / a[0]) * a[0]);
  const round = steps.find((count) => off(count * b[0]) <= ROUNDING * count);
  if (round === undefined) return [];
  const shifts = boxes.flatMap(({ minX }) => steps.slice(0, round).map((i) => minX - first.minX + i * b[0]));
  return shifts.filter((by) => off(by) > ROUNDING * round);
}

/**
 * The smallest cut at the low and the high end of those courses of a running bond that lie otherwise than the first does, whose cuts are
 * given; undefined where all courses lie alike, or where so little is left of a tile that the gap may take it.
 *
 * @example otherCourses({ a: [100, 0], b: [50, 40], tiles: [{ ring: [[0, 0], [96, 0], [96, 36], [0, 36]] }] }, 4, [96, 70]) //=> [46, 20]
 */
export function otherCourses(
  pattern: Repeated,
  joint: Ticks,
  [low, high]: readonly [Ticks, Ticks],
): readonly [Ticks | undefined, Ticks | undefined] {
  const module = pattern.a[0];
  const cut = (size: number) => {
    const up = (((size + joint - 1) % module) + module) % module;
    return up + 1 - joint;
  };
  const least = (cuts: readonly number[]) => {
    const smallest = Math.min(...cuts);
    return smallest > 2 * joint && smallest < Infinity ? smallest : undefined;
  };
  const shifts = shiftsOf(pattern, joint);
  return [least(shifts.map((by) => cut(low + by))), least(shifts.map((by) => cut(high - by)))];
}
