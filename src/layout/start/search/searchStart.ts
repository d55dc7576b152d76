import type { Point } from '../../../geometry/index.ts';
import type { Pattern } from '../../../pattern/Pattern.ts';
import type { Ground } from '../../frame/Ground.ts';
import type { WallScore } from '../../WallScore.ts';
import { sameStart } from '../sameStart.ts';
import { bestPlaces } from './bestPlaces.ts';
import { inTicks } from './inTicks.ts';
import { leastRepeat } from './leastRepeat.ts';
import { liesAslant } from './liesAslant.ts';
import { scoreAt } from './scoreAt.ts';
import { searchPlaces } from './searchPlaces.ts';
import { type SearchView, searchView } from './searchView.ts';
import type { WallDirection } from './WallReading.ts';
import { wallDirections } from './wallDirections.ts';
import { type Fixed, type OffBalance, wallParts } from './wallParts.ts';

/** The best starts for the walls that are seen, the best first, with the proof that none is better. */
export interface SearchedStart {
  readonly origins: readonly Point[];
  readonly best: WallScore;
  /** What no start can be better than, each figure within the ones before it. */
  readonly bound: WallScore;
  readonly scoreOf: (origin: Point) => WallScore;
  /** Where an origin stands in the repeat, told alike however the room is looked at. */
  readonly inRepeat: (origin: Point) => Point;
  /** Which way along x that counts upwards. */
  readonly way: 1 | -1;
}

/** What is asked of the search beside the walls. */
export interface StartWishes {
  /** Coordinates of the origin that stay, and an origin that is as good as any where no wall says. */
  readonly fixed: Fixed;
  readonly from: Point;
  /** What a narrowest cut may be less by, as a share of a tile, for a start to be given after the best. */
  readonly margin: number;
  readonly offBalance: OffBalance;
}

/** Where the pattern stands best, judged by the cuts along the walls that are seen. */
export function searchStart(
  ground: Ground,
  pattern: Pattern,
  { fixed, from, margin, offBalance }: StartWishes,
): SearchedStart {
  const directions = wallDirections(ground, pattern);
  const scoreOf = (origin: Point) =>
    directions
      .map((one) => scoreAt(one, one.normal[0] * origin[0] + one.normal[1] * origin[1]))
      .reduce(added, NO_WALL);
  const view = searchView(ground, leastRepeat(pattern), directions);
  const into = ([x, y]: Point): Point => [view.into(x, 0), view.into(y, 1)];
  const parts = wallParts(
    view.directions,
    view,
    [
      fixed[0] === undefined ? undefined : view.into(fixed[0], 0),
      fixed[1] === undefined ? undefined : view.into(fixed[1], 1),
    ],
    {
      offBalance: (position, axis) => offBalance(view.back(position, axis), axis),
      slack: ground.tolerance,
    },
  );
  const given: Point = [fixed[0] ?? from[0], fixed[1] ?? from[1]];
  let origins: Point[] = [into(given)];
  let [best, bound] = parts.length > 0 ? [NO_WALL, NO_WALL] : [scoreOf(given), scoreOf(given)];
  const slantwise = isSlantwise(directions);
  const isHeld = fixed.some((at) => at !== undefined);
  for (const { question, toOrigin } of parts) {
    const found = searchPlaces(question);
    const places = slantwise
      ? bestPlaces(question, found, isHeld ? margin : -1, 'line')
      : bestPlaces(question, found, margin);
    origins = origins.flatMap((origin) => places.map(({ place }) => toOrigin(place, origin)));
    best = added(best, found.best);
    bound = added(bound, found.bound);
  }
  if (parts.length === 2) {
    const moves = alikeMoves(view);
    const first = pattern.inCourses ? origins : origins.slice(0, Math.ceil(MOST_ORIGINS / moves.length));
    origins = first.flatMap(([x, y]) => moves.map(([u, v]): Point => [x + u, y + v]));
  }
  if (fixed.every((at) => at === undefined) && directions.length === 1)
    origins = origins.slice(0, MOST_OPEN).flatMap((origin) => alongWalls(origin, view));
  return {
    origins: origins.map(([x, y]) => inTicks([view.back(x, 0), view.back(y, 1)], scoreOf)),
    best,
    bound,
    scoreOf,
    inRepeat: (origin) => inRepeat(into(origin), view),
    way: view.way,
  };
}

/** A place less whole repeats. */
function inRepeat([x, y]: Point, { a, b }: SearchView): Point {
  const area = a[0] * b[1] - a[1] * b[0];
  const i = Math.floor((x * b[1] - y * b[0]) / area);
  const j = Math.floor((y * a[0] - x * a[1]) / area);
  return [x - i * a[0] - j * b[0], y - i * a[1] - j * b[1]];
}

/**
 * All moves of an origin after which two directions have the phases that they had. Slantwise to the pattern, or where its tiles lie
 * two ways, a wall sees more of them alike than are: moved from one to the other the walls look the same, corners do not.
 */
function alikeMoves({ directions, a, b }: SearchView): Point[] {
  const [one, other] = directions.map(({ normal }) => normal) as [Point, Point];
  const [p, q] = directions.map(({ spacing }) => spacing) as [number, number];
  const cross = one[0] * other[1] - one[1] * other[0];
  const count = Math.min(MOST_ALIKE, Math.round(((a[0] * b[1] - a[1] * b[0]) * Math.abs(cross)) / (p * q)));
  const found: Point[] = [];
  for (let i = 0; i < count; i++) {
    for (let j = 0; j < count; j++) {
      const [u, v] = [(i * p) / cross, (j * q) / cross];
      const at: Point = [u * other[1] - v * one[1], v * one[0] - u * other[0]];
      if (!found.some((known) => sameStart(known, at, { a, b }))) found.push(at);
    }
  }
  return found;
}

/**
 * Where all walls in sight lie one way they leave it open where the pattern stands along them, and the pieces decide: places all
 * along one repeat, counted from the middle of the walls.
 */
function alongWalls([x, y]: Point, { directions, a, b }: SearchView): Point[] {
  const [nx, ny] = directions[0]!.normal;
  const phase = x * nx + y * ny;
  const repeat = (a[0] * b[1] - a[1] * b[0]) / directions[0]!.spacing;
  return Array.from({ length: PLACES_ALONG }, (_, i): Point => {
    const by = (i / PLACES_ALONG) * repeat;
    return [phase * nx - by * ny, phase * ny + by * nx];
  });
}

/** Whether walls lie slantwise to the pattern: then alike origins are beside enough. */
function isSlantwise(directions: readonly WallDirection[]): boolean {
  return directions.length === 2 && directions.some(liesAslant);
}

/** Places that are looked at along walls of one direction, and the starts across them of which each is tried there. */
const PLACES_ALONG = 8;
const MOST_OPEN = 5;

/** More than so many are not told apart. */
const MOST_ALIKE = 40;
/** Origins given at most of a pattern in no courses, which walls see alike at many. */
const MOST_ORIGINS = 400;

const NO_WALL: WallScore = { strips: 0, halves: 0, narrowest: 1 };

function added(one: WallScore, other: WallScore): WallScore {
  return {
    strips: one.strips + other.strips,
    halves: one.halves + other.halves,
    narrowest: Math.min(one.narrowest, other.narrowest),
  };
}
