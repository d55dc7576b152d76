import type { Point } from '../../geometry/index.ts';
import { slantOf } from '../frame/slantOf.ts';
import type { WallScore } from '../WallScore.ts';
import { affordable } from './affordable.ts';
import { AXES, type Choice } from './Choice.ts';
import type { CandidateSet } from './candidateSet.ts';
import { isSlanted } from './mainRuns.ts';
import { allowedShare, bestOf, nearlyBest } from './nearlyBest.ts';
import { offBalance, offeredStarts, searchedChoice } from './offeredStarts.ts';
import type { StartQuestion } from './StartQuestion.ts';
import { distinct } from './sameStart.ts';
import { searchStart } from './search/searchStart.ts';
import type { Fixed } from './search/wallParts.ts';
import { spreadStarts } from './spreadStarts.ts';

/** The starts worth a look, with what the walls in sight make of each. */
export interface NearStarts {
  /** As good as the best along the walls, or nearly so. */
  readonly near: readonly Choice[];
  /** Those that only balance a run. */
  readonly rule: readonly Choice[];
  readonly bound: WallScore;
  readonly wallsOf: (choice: Choice) => WallScore;
  /** The start so far from an origin, where it is nearly as good as the best along the walls and where the job leaves it open. */
  readonly beside: (origin: Point, by: Point) => Choice | undefined;
}

/** Searches the walls, and takes from all starts that the job allows those that are worth laying piece by piece. */
export function nearStarts(
  question: Pick<StartQuestion, 'ground' | 'pattern' | 'surface'>,
  { choices, runs }: CandidateSet,
): NearStarts {
  const { ground, pattern, surface } = question;
  const fixed = AXES.map((axis, i) =>
    surface.start[axis].kind === 'best' ? undefined : choices[0]!.origin[i],
  ) as unknown as Fixed;
  const { origins, best, bound, scoreOf, inRepeat, way } = searchStart(ground, pattern, {
    fixed,
    from: choices[0]!.origin,
    margin: allowedShare(pattern, ground),
    offBalance: (position, axis) => offBalance(position, runs[AXES[axis]], pattern, axis),
  });
  const mixes = pattern.inCourses && !isSlanted(slantOf(surface.pattern, ground.frame.edges));
  const searched = offeredStarts(question, choices, origins, runs, fixed, mixes);
  const startAt = (origin: Point) => searchedChoice(question, choices[0]!, origin, runs, fixed);
  // Where walls see every place alike, as they do of a pattern that lies along none of them, the pieces decide among places all over it.
  const others = pattern.inCourses ? [] : spreadStarts(question, choices[0]!.origin).map(startAt);
  const offers = distinct([...searched, ...others], pattern);
  const walls = new Map(offers.map((offer) => [offer, scoreOf(offer.origin)]));
  const wallsOf = (choice: Choice) => walls.get(choice) ?? scoreOf(choice.origin);
  const offered = offers.map(wallsOf);
  // What rounding to whole ticks takes from the best may leave none that is nearly as good: then it is the best of those there are.
  const some = offered.some((score) => nearlyBest(score, best, pattern, ground));
  const measure = some ? best : bestOf(offered, ground.tolerance);
  const isNear = (score: WallScore) => nearlyBest(score, measure, pattern, ground);
  const balanced = offers.filter(
    ({ along, across }) => along.what !== 'searched' && across.what !== 'searched',
  );
  const startNear = (origin: Point) => {
    const isFree = fixed.every((at, i) => at === undefined || at === origin[i]);
    return isFree && isNear(scoreOf(origin)) ? startAt(origin) : undefined;
  };
  return {
    near: inOrder(
      offers.filter((offer) => isNear(wallsOf(offer))),
      inRepeat,
    ),
    rule: [...balanced].sort((a, b) => a.shift - b.shift).slice(0, affordable(question)),
    bound,
    wallsOf,
    beside: (origin, [u, v]) => startNear([origin[0] + way * u, origin[1] + v]),
  };
}

/** Choices in an order that does not hang on how the room is looked at. */
function inOrder(choices: readonly Choice[], inRepeat: (origin: Point) => Point): Choice[] {
  const placed = choices.map((choice) => ({ choice, at: inRepeat(choice.origin) }));
  placed.sort((one, other) => other.at[0] - one.at[0] || other.at[1] - one.at[1]);
  return placed.map(({ choice }) => choice);
}
