import type { Ticks } from '../../measure/index.ts';
import type { Pattern } from '../../pattern/Pattern.ts';
import type { Face } from '../frame/Face.ts';
import type { FacingRun } from './findRuns.ts';
import { laidEnds } from './laidEnds.ts';
import { stretchOf } from './stretchOf.ts';

/** A start along a run and the smallest cut that ends any of its courses. */
export interface CourseEnds {
  readonly position: Ticks;
  readonly smallest: Ticks;
}

/** How much each kind of course is ahead of the first; none where courses do not repeat or are not shifted at all. */
function shiftsOf({ tiles, b, straightX, inCourses }: Pattern): readonly Ticks[] {
  if (!inCourses || straightX || b[0] !== 0) return [];
  return tiles.map(({ ring }) => ring[0]![0] - tiles[0]!.ring[0]![0]);
}

/** The smallest cut that ends any kind of course of a running bond along a run; undefined where courses have no kinds. */
export function courseEnds(
  run: FacingRun,
  pattern: Pattern,
  faces: readonly Face[],
  position: Ticks,
): CourseEnds | undefined {
  const shifts = shiftsOf(pattern);
  if (shifts.length === 0) return undefined;
  const cuts = shifts.flatMap((shift) => laidEnds(run, pattern, 0, position + shift, faces));
  return { position, smallest: Math.min(...cuts) };
}

/**
 * The start along a run at which the smallest end cut of all courses of a running bond is as large as it can be.
 *
 * As the pattern moves, every cut at the low end grows while every cut at the high end shrinks, so the best is where two of
 * them are equal or where one becomes a whole tile. Nearest to `from` among equals.
 */
export function bestCourses(
  run: FacingRun,
  pattern: Pattern,
  faces: readonly Face[],
  from: Ticks,
): CourseEnds | undefined {
  const { low, high, size, joint } = stretchOf(run, pattern, 0);
  const module = size + joint;
  const shifts = shiftsOf(pattern);
  const places = shifts.flatMap((one) => [
    ...wholeAt(faces[run.lowFace]!, joint).map((by) => low - one - by),
    ...wholeAt(faces[run.highFace]!, joint).map((by) => high - size - one + by),
    ...shifts.flatMap((other) => {
      const equal = Math.round((low + high - size - one - other) / 2);
      return [equal, equal + Math.round(module / 2)];
    }),
  ]);
  const near = (place: number) => from + wrapped(place - from, module);
  const found = places.flatMap((place) => courseEnds(run, pattern, faces, near(place)) ?? []);
  found.sort((a, b) => b.smallest - a.smallest || Math.abs(a.position - from) - Math.abs(b.position - from));
  return found[0];
}

/** How far a tile may stand beyond the end of the field, or a strip into it, so that a whole tile ends the course. */
function wholeAt({ gap, gapMax }: Face, joint: Ticks): readonly Ticks[] {
  return [0, Math.min(0, joint + gap - gapMax) - joint];
}

/** The same step within half a module either way. */
function wrapped(by: number, module: number): number {
  const up = ((by % module) + module) % module;
  return up > module / 2 ? up - module : up;
}
