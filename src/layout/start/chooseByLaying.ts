import type { Point } from '../../geometry/index.ts';
import type { AxisStart, Rival, Start } from '../Layout.ts';
import { affordable } from './affordable.ts';
import { farApart, movedOn, rankScored } from './bestLaid.ts';
import { AXES, type Choice, type MainRuns } from './Choice.ts';
import type { CandidateSet } from './candidateSet.ts';
import { evaluate } from './evaluate.ts';
import { spacingAlong } from './mainRuns.ts';
import { rivalsOf } from './rivalsOf.ts';
import type { Scored, StartQuestion } from './StartQuestion.ts';
import { distinct } from './sameStart.ts';

/**
 * Steps each way in which the repeat is gone through; one step on one axis is so many on the other, forwards and backwards, so that
 * of so few places no two stand level. And starts laid at most that put a joint or a tile on the middle.
 */
const STEPS = 13;
const SKIP = 5;
const MOST_BALANCED = 6;

/** Where no start can be said to be the best without laying it, any may have been: no wall tells more. */
const NOTHING_BOUND = { strips: 0, halves: 0, narrowest: 1 } as const;

/**
 * Where a pattern starts that is no course of tiles of one size: joint and tile on the middle of the runs, and places spread evenly
 * over its repeat, are laid and counted, and from the best of these the start moves on to what lies beside. It is not proved that none is better.
 */
export function chooseByLaying(
  question: Pick<StartQuestion, 'ground' | 'pattern' | 'surface'>,
  set: CandidateSet,
): { readonly start: Start; readonly runs: MainRuns; readonly rivals: readonly Rival[] } {
  const { ground, pattern } = question;
  const balanced = distinct(set.choices, pattern).slice(0, MOST_BALANCED);
  const choices = distinct([...balanced, ...spread(question, balanced[0]!)], pattern);
  const known: Scored[] = [];
  const lay = (choice: Choice): Scored => {
    const scored = { choice, candidate: evaluate(ground, pattern, choice, set.ends) };
    known.push(scored);
    return scored;
  };
  const laid = rankScored(choices.map(lay));
  const beside = (origin: Point, by: Point) => moved(question, balanced[0]!, origin, by);
  const most = Math.max(0, affordable(question) - laid.length);
  const tops = movedOn(laid, { most, pattern, beside, lay });
  const best = rankScored(tops)[0]!;
  // A start hard by the chosen one tells nothing.
  const [, runnerUp] = farApart([best, ...laid], pattern);
  const { along, across } = best.choice;
  const start = { along, across, chosen: best.candidate, bound: NOTHING_BOUND, alternatives: [] };
  return {
    start: { ...start, ...(runnerUp && { runnerUp: runnerUp.candidate }) },
    runs: set.runs,
    rivals: rivalsOf(best, known, ground),
  };
}

/** A start moved on the axes that no wish holds; none where one of them would have to be moved. */
function moved(
  { surface }: Pick<StartQuestion, 'surface'>,
  from: Choice,
  [x, y]: Point,
  [u, v]: Point,
): Choice | undefined {
  const by = [u, v];
  const isHeld = AXES.some((axis, i) => by[i] !== 0 && surface.start[axis].kind !== 'best');
  return isHeld ? undefined : startAt(from, [x + u, y + v]);
}

/** The start at an origin, told from a balanced one: on an axis where it lies as that does, it is that one's. */
function startAt(from: Choice, origin: Point): Choice {
  const start = (axis: 0 | 1): AxisStart => {
    const own = from[AXES[axis]];
    return origin[axis] === from.origin[axis] ? own : { ...own, what: 'tried', position: origin[axis] };
  };
  const shift = Math.abs(origin[0] - from.origin[0]) + Math.abs(origin[1] - from.origin[1]);
  return { origin, along: start(0), across: start(1), shift };
}

/** The repeat in even steps from a start, on the axes that no wish holds. */
function spread({ pattern, surface }: Pick<StartQuestion, 'pattern' | 'surface'>, from: Choice): Choice[] {
  const [x, y] = AXES.map((axis) => surface.start[axis].kind === 'best');
  const { a, b } = pattern;
  const [first, second]: readonly [Point, Point] =
    x && y
      ? [a, b]
      : [
          [x ? spacingAlong(pattern, 0) : 0, 0],
          [0, y ? spacingAlong(pattern, Math.PI / 2) : 0],
        ];
  const steps = Array.from({ length: STEPS }, (_, n) => n);
  return steps.flatMap((i) =>
    [SKIP, STEPS - SKIP].flatMap((skip): Choice[] => {
      const j = (i * skip) % STEPS;
      const by = [0, 1].map((axis) => Math.round((i * first[axis]! + j * second[axis]!) / STEPS));
      if (by.every((ticks) => ticks === 0)) return [];
      return [startAt(from, [from.origin[0] + by[0]!, from.origin[1] + by[1]!])];
    }),
  );
}
