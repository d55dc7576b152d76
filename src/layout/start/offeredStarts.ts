import type { Point } from '../../geometry/index.ts';
import { TICKS_PER_INCH } from '../../measure/index.ts';
import type { Pattern } from '../../pattern/Pattern.ts';
import type { AxisStart } from '../Layout.ts';
import { jointOnMiddle, tileOnMiddle } from './balanced.ts';
import { AXES, type Choice, type MainRuns } from './Choice.ts';
import type { FacingRun } from './findRuns.ts';
import type { StartQuestion } from './StartQuestion.ts';
import { distinct, sameStart } from './sameStart.ts';
import type { Fixed } from './search/wallParts.ts';
import { stretchOf } from './stretchOf.ts';

/**
 * The starts that may be laid and counted: those that balance a run, the searched ones, and where walls lie along the pattern each
 * place on one axis with each on the other.
 */
export function offeredStarts(
  question: Pick<StartQuestion, 'ground' | 'pattern'>,
  balanced: readonly Choice[],
  origins: readonly Point[],
  runs: MainRuns,
  fixed: Fixed,
  mixes: boolean,
): Choice[] {
  const searched = origins
    .map((origin) => snapped(origin, balanced, question.pattern, mixes))
    .map((origin) => searchedChoice(question, balanced[0]!, origin, runs, fixed));
  const all = [...balanced, ...searched];
  if (!mixes) return distinct(all, question.pattern);
  const [alongs, acrosses] = [onAxis(all, 0), onAxis(all, 1)];
  const mixed = alongs.flatMap((one) =>
    acrosses.map((other): Choice => {
      const shift = shiftOn(one, 0, question, runs, fixed) + shiftOn(other, 1, question, runs, fixed);
      return { origin: [one.origin[0], other.origin[1]], along: one.along, across: other.across, shift };
    }),
  );
  return distinct(mixed, question.pattern);
}

/** A place nearer than this to one that balances a run, in ticks, is that one. */
const SAME_PLACE = TICKS_PER_INCH / 32;

/** An origin with each coordinate that is all but balanced put where it is; both together where the walls lie slantwise. */
function snapped(origin: Point, balanced: readonly Choice[], pattern: Pattern, mixes: boolean): Point {
  const off = (value: number, by: number) => value - Math.round(value / by) * by;
  if (!mixes) {
    const same = balanced.find((one) => sameStart(one.origin, origin, pattern, SAME_PLACE));
    return same ? same.origin : origin;
  }
  const on = (axis: 0 | 1) => {
    const near = balanced.map((one) =>
      off(one.origin[axis] - origin[axis], axis === 0 ? pattern.module[0] : pattern.b[1]),
    );
    return origin[axis] + (near.find((by) => Math.abs(by) <= SAME_PLACE) ?? 0);
  };
  return [on(0), on(1)];
}

/** One start for each place on an axis. */
function onAxis(choices: readonly Choice[], axis: 0 | 1): Choice[] {
  const places = new Map<number, Choice>();
  for (const one of choices) if (!places.has(one.origin[axis])) places.set(one.origin[axis], one);
  return [...places.values()];
}

export function searchedChoice(
  question: Pick<StartQuestion, 'ground' | 'pattern'>,
  given: Choice,
  origin: Point,
  runs: MainRuns,
  fixed: Fixed,
): Choice {
  const { faces } = question.ground;
  const [along, across] = AXES.map((axis, i): AxisStart => {
    if (fixed[i] !== undefined) return given[axis];
    const { lowFace, highFace, low, high } = runs[axis];
    const run = { from: faces[lowFace]!.id, to: faces[highFace]!.id, length: high - low };
    return { wish: 'best', what: 'searched', position: origin[i]!, run };
  }) as [AxisStart, AxisStart];
  const choice = { origin, along, across, shift: 0 };
  const shift = shiftOn(choice, 0, question, runs, fixed) + shiftOn(choice, 1, question, runs, fixed);
  return { ...choice, shift };
}

function shiftOn(
  { origin }: Choice,
  axis: 0 | 1,
  { pattern }: Pick<StartQuestion, 'pattern'>,
  runs: MainRuns,
  fixed: Fixed,
): number {
  return fixed[axis] === undefined ? offBalance(origin[axis], runs[AXES[axis]], pattern, axis) : 0;
}

/** How far, in ticks, a tile's lower edge is from where a joint or a tile would lie on the middle of the run. */
export function offBalance(position: number, run: FacingRun, pattern: Pattern, axis: 0 | 1): number {
  const stretch = stretchOf(run, pattern, axis);
  const module = pattern.inCourses ? stretch.size + stretch.joint : pattern.module[axis];
  const off = [jointOnMiddle(stretch), tileOnMiddle(stretch)].map((middle) => {
    const up = (((position - middle) % module) + module) % module;
    return Math.min(up, module - up);
  });
  return Math.min(...off);
}
