import type { Point } from '../../../geometry/index.ts';
import type { WallScore } from '../../WallScore.ts';
import { downFrom } from './downFrom.ts';
import { type PlaceQuestion, scorePlace } from './PlaceQuestion.ts';
import { ALIKE_SHARE } from './searchPlaces.ts';

type Sound = (score: WallScore) => boolean;

/** Longest moves, in ticks; each shorter one is half of it. */
const NEAR = 256;
const FAR = 16_384;

/**
 * A place moved until its narrowest cut is as wide as it can be near by, among places that are `sound`, and from there as near to
 * balance as can be without any loss, or where that cannot be told to the middle: so that the mirrored room has the mirrored place. None where no place near by is sound.
 */
export function evenPlace(question: PlaceQuestion, from: Point, sound: Sound): Point[] {
  const near = [from, ...SIDES.map(([u, v]): Point => [from[0] + u, from[1] + v])];
  for (const firm of FIRMNESS) {
    const score = (place: Point, floor?: number) => scorePlace(question, place, firm, floor);
    const begun = near.find((at) => sound(score(at)));
    if (begun) return [evened(question, begun, score, sound)];
  }
  return [];
}

function evened(
  question: PlaceQuestion,
  begun: Point,
  score: (place: Point, floor?: number) => WallScore,
  sound: Sound,
): Point {
  const narrowness = (place: Point, below: number) => {
    const found = score(place, -below);
    return found.narrowest >= -below && sound(found) ? -found.narrowest : Infinity;
  };
  const widest = downFrom(question, begun, narrowness, NEAR);
  const least = score(widest).narrowest - ALIKE_SHARE / 2;
  const asWide = (place: Point) => {
    const found = score(place, least);
    return found.narrowest >= least && sound(found);
  };
  const { offBalance } = question;
  if (!offBalance) return middleOf(widest, asWide);
  const imbalance = (place: Point, below: number) => {
    const off = offBalance(place);
    return off < below && asWide(place) ? off : Infinity;
  };
  return downFrom(question, widest, imbalance, FAR);
}

/** The middle of the stretch of places along the first coordinate that are as good as one. */
function middleOf([from, y]: Point, good: (place: Point) => boolean): Point {
  const farthest = (way: 1 | -1) => {
    let at = from;
    for (let step = FAR; step >= 1; step /= 2) {
      while (Math.abs(at - from) < 16 * FAR && good([at + way * step, y])) at += way * step;
    }
    return at;
  };
  return [Math.round((farthest(-1) + farthest(1)) / 2), y];
}

/**
 * A place should be as good some ticks to either side, or what is only just sound would not stay so in whole ticks; where there is
 * none so firm, as it stands.
 */
const FIRMNESS: readonly Point[] = [
  [-4, -4],
  [0, 0],
];

/** Where a sound place may be found beside one that is not. */
const SIDES: readonly Point[] = [32, 128, 512].flatMap((n): Point[] => [
  [n, 0],
  [-n, 0],
  [0, n],
  [0, -n],
]);
