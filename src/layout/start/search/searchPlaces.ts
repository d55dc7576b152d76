import type { Point } from '../../../geometry/index.ts';
import { TICKS_PER_INCH } from '../../../measure/index.ts';
import type { WallScore } from '../../WallScore.ts';
import { downFrom } from './downFrom.ts';
import { type PlaceQuestion, type ScoredPlace, scorePlace } from './PlaceQuestion.ts';

/** The best that was found, figure by figure in the order of the trade, and the best that any place could have. */
export interface PlaceAnswer {
  readonly best: WallScore;
  readonly bound: WallScore;
  /** Places as good as the best but for the narrowest cut, and places near to one that is as good in that too. */
  readonly good: readonly ScoredPlace[];
}

/** A difference that is not searched for any more, on one coordinate and on two: in ticks of wall, 1/1000 and 1/100 ft. */
const SAME_LENGTH = [(12 * TICKS_PER_INCH) / 1000, (12 * TICKS_PER_INCH) / 100] as const;
/** The same for the narrowest cut as a share of a tile: 1/1000 and 1/200 in 12 in. */
const SAME_SHARE = [1 / 12_000, 1 / 2400] as const;
/** What is as wide as the widest: 1/100 in 12 in of cut. */
export const ALIKE_SHARE = 1 / 1200;
/** A box this small, in ticks, on one coordinate and on two, is looked at only once for all that is as good as the best. */
const SMALL = [TICKS_PER_INCH / 64, TICKS_PER_INCH / 8] as const;

interface Box {
  readonly low: Point;
  readonly high: Point;
  readonly bound: WallScore;
}

/**
 * The best place in the order of the trade: the least wall with strips, then the least that its cuts lack of half a tile, then the
 * widest narrowest cut, each to 1/100. Places are parted into boxes; a box in which no place can be better is left, so what stays
 * is a proof for every whole tick.
 */
export function searchPlaces(question: PlaceQuestion): PlaceAnswer {
  const tried = question.seeds.map((place) => ({ place, score: scorePlace(question, place) }));
  const state: State = { left: question.boxes, tried };
  const coordinates = question.low[1] === question.high[1] ? 0 : 1;
  const [length, share] = [SAME_LENGTH[coordinates], SAME_SHARE[coordinates]];
  const strips = least(
    question,
    state,
    ({ strips }) => strips,
    () => true,
    length,
  );
  const few = (score: WallScore) => score.strips <= strips.value + question.slack.strips;
  const halves = least(question, state, (score) => score.halves, few, length);
  const sound = (score: WallScore) => few(score) && score.halves <= halves.value + question.slack.halves;
  const widest = least(question, state, ({ narrowest }) => -narrowest, sound, share);
  const best = { strips: strips.value, halves: halves.value, narrowest: -widest.value };
  const asGood = (score: WallScore) => sound(score) && score.narrowest >= best.narrowest - ALIKE_SHARE;
  return {
    best,
    bound: { strips: strips.bound, halves: halves.bound, narrowest: -widest.bound },
    good: [...tried.filter(({ score }) => sound(score)), ...allGood(question, state, asGood)],
  };
}

/** Places in every small box that may hold one as good as the best. */
function allGood(
  question: PlaceQuestion,
  state: State,
  asGood: (score: WallScore) => boolean,
): ScoredPlace[] {
  const small = SMALL[question.low[1] === question.high[1] ? 0 : 1];
  const found: ScoredPlace[] = [];
  const stack: Box[] = [boxOf(question, question.low, question.high)];
  while (stack.length > 0 && state.left > -question.boxes) {
    const box = stack.pop()!;
    if (!asGood(box.bound)) continue;
    state.left -= 1;
    const middle: Point = [half(box.low[0], box.high[0]), half(box.low[1], box.high[1])];
    if (Math.max(box.high[0] - box.low[0], box.high[1] - box.low[1]) <= small)
      found.push({ place: middle, score: scorePlace(question, middle) });
    else stack.push(...split(box, middle).map(([from, to]) => boxOf(question, from, to)));
  }
  return found;
}

/** Longest step, in ticks, from a place that is found to a better one. */
const LONGEST = 1024;

interface State {
  left: number;
  readonly tried: ScoredPlace[];
}

/** The least of a figure among places that are allowed, by halving boxes; whatever allows a score must allow a better one. */
function least(
  question: PlaceQuestion,
  state: State,
  figure: (score: WallScore) => number,
  allowed: (score: WallScore) => boolean,
  same: number,
) {
  let value = Infinity;
  const take = ({ score }: ScoredPlace) => {
    if (allowed(score) && figure(score) < value) value = figure(score);
  };
  state.tried.forEach(take);
  const cost = (place: Point) => {
    const score = scorePlace(question, place);
    return allowed(score) ? figure(score) : Infinity;
  };
  // What is found is followed down to the bottom: the sooner the least is known, the more boxes are left.
  const follow = ({ place }: ScoredPlace) => {
    const at = downFrom(question, place, cost, LONGEST);
    const one = { place: at, score: scorePlace(question, at) };
    state.tried.push(one);
    take(one);
  };
  const stack: Box[] = [boxOf(question, question.low, question.high)];
  let bound = Infinity;
  while (stack.length > 0) {
    const box = stack.pop()!;
    const low = figure(box.bound);
    if (!allowed(box.bound)) continue;
    if (low >= value - same || state.left <= 0) {
      bound = Math.min(bound, low);
      continue;
    }
    state.left -= 1;
    const middle: Point = [half(box.low[0], box.high[0]), half(box.low[1], box.high[1])];
    const one = { place: middle, score: scorePlace(question, middle) };
    state.tried.push(one);
    if (allowed(one.score) && figure(one.score) < value) follow(one);
    const parts = split(box, middle).map(([from, to]) => boxOf(question, from, to));
    stack.push(...parts.sort((a, b) => figure(b.bound) - figure(a.bound)));
  }
  return { value, bound: Math.min(value, bound) };
}

function half(low: number, high: number): number {
  return Math.floor((low + high) / 2);
}

/** Both halves of a box across its longer side; nothing of a box that is one place. */
function split({ low, high }: Box, middle: Point): (readonly [Point, Point])[] {
  const [wide, deep] = [high[0] - low[0], high[1] - low[1]];
  if (wide === 0 && deep === 0) return [];
  return wide >= deep
    ? [
        [low, [middle[0], high[1]]],
        [[middle[0] + 1, low[1]], high],
      ]
    : [
        [low, [high[0], middle[1]]],
        [[low[0], middle[1] + 1], high],
      ];
}

function boxOf(question: PlaceQuestion, low: Point, high: Point): Box {
  const reach: Point = [(high[0] - low[0]) / 2, (high[1] - low[1]) / 2];
  return { low, high, bound: scorePlace(question, [low[0] + reach[0], low[1] + reach[1]], reach) };
}
