import type { Point } from '../../../geometry/index.ts';
import { TICKS_PER_INCH } from '../../../measure/index.ts';
import type { WallScore } from '../../WallScore.ts';
import { evenPlace } from './evenPlace.ts';
import { type PlaceQuestion, type ScoredPlace, scorePlace } from './PlaceQuestion.ts';
import { ALIKE_SHARE, type PlaceAnswer } from './searchPlaces.ts';

/** Places that are followed up, and those that are given. */
const MOST_TRIED = 64;
const MOST_BESTS = 20;
const MOST_GIVEN = 40;
/** Places nearer than this, in ticks, are one. */
const APART = TICKS_PER_INCH / 32;
/** Places nearer than this come after those that are farther from all. */
const FAR_APART = TICKS_PER_INCH;

/**
 * The places that are as good as the best that was found, each moved to where its narrowest cut is widest: a room often has two, and
 * seen in a mirror it must have the same two. After them places beside these whose narrowest cut is less by `margin` at most, as a
 * share: corners and openings may like them better; none with a margin below 0. They lie `around` the best, or all along a line.
 */
export function bestPlaces(
  question: PlaceQuestion,
  { best, good }: PlaceAnswer,
  margin: number,
  around: 'best' | 'line' = 'best',
): ScoredPlace[] {
  const scored = (place: Point): ScoredPlace => ({ place, score: scorePlace(question, place) });
  const sound = ({ strips, halves }: WallScore) =>
    strips <= best.strips + question.slack.strips && halves <= best.halves + question.slack.halves;
  // A sound stretch may be narrower than the boxes: the middle of one must not stand for what lies beside it.
  const firstSound = ({ score }: ScoredPlace) => (sound(score) ? 0 : 1);
  const begun = spread(
    [...good].sort((one, other) => firstSound(one) - firstSound(other) || byWidest(one, other)),
    MOST_TRIED,
    4 * APART,
  );
  const moved = begun.flatMap(({ place }) => evenPlace(question, place, sound).map(scored));
  if (moved.length === 0)
    return good
      .filter(({ score }) => sound(score))
      .sort(byWidest)
      .slice(0, 1);
  const widest = Math.max(...moved.map(({ score }) => score.narrowest));
  const balance = ({ place }: ScoredPlace) => question.offBalance?.(place) ?? 0;
  const bests = spread(
    moved
      .filter(({ score }) => score.narrowest >= widest - ALIKE_SHARE)
      .sort((one, other) => balance(one) - balance(other) || byWidest(one, other)),
    MOST_BESTS,
    APART,
  );
  const beside = (around === 'line' ? placesAlong(question) : placesBeside(question, bests)).map(scored);
  // Where walls like a long stretch alike, places all along it are given before those hard by the best.
  const others = [...beside, ...moved]
    .filter(({ score }) => sound(score) && margin >= 0 && score.narrowest >= widest - margin)
    .sort((one, other) => other.score.narrowest - one.score.narrowest || balance(one) - balance(other));
  const far = spread([...bests, ...others], MOST_GIVEN, FAR_APART, bests.length);
  return spread([...far, ...others], MOST_GIVEN, APART, far.length);
}

/** Places beside others, a quarter inch from one to the next. */
function placesBeside({ low, high }: PlaceQuestion, bests: readonly ScoredPlace[]): Point[] {
  const ways = low[1] === high[1] ? ON_LINE : ROUND;
  return bests.flatMap(({ place: [x, y] }) => ways.map(([u, v]): Point => [x + u, y + v]));
}

/** Places all along a line, so that they do not hang on which is the best by a hair. */
function placesAlong({ low, high }: PlaceQuestion): Point[] {
  const count = Math.floor((high[0] - low[0]) / SIDE);
  return Array.from({ length: count }, (_, i): Point => [low[0] + i * SIDE, low[1]]);
}

const SIDE = TICKS_PER_INCH / 4;
const ON_LINE: readonly Point[] = [1, 2, 4, 6, 8, 12, 16, 20, 24, 32, 40, 48].flatMap((n): Point[] => [
  [n * SIDE, 0],
  [-n * SIDE, 0],
]);
const ROUND: readonly Point[] = [-1, 1].flatMap((n): Point[] => [
  [n * SIDE, 0],
  [0, n * SIDE],
]);

function byWidest(one: ScoredPlace, other: ScoredPlace): number {
  return (
    other.score.narrowest - one.score.narrowest ||
    one.place[0] - other.place[0] ||
    one.place[1] - other.place[1]
  );
}

/** Of places near each other the first, so many at most; the first `all` whatever they lie near. */
function spread(places: readonly ScoredPlace[], most: number, apart: number, all = 0): ScoredPlace[] {
  const kept: ScoredPlace[] = places.slice(0, all);
  for (const one of places.slice(all)) {
    if (kept.length >= most) break;
    const near = ({ place }: ScoredPlace) =>
      Math.abs(place[0] - one.place[0]) < apart && Math.abs(place[1] - one.place[1]) < apart;
    if (!kept.some(near)) kept.push(one);
  }
  return kept;
}
