import type { Point } from '../../../geometry/index.ts';
import { commonDivisor } from '../../../measure/index.ts';
import type { Pattern } from '../../../pattern/Pattern.ts';
import type { FieldEdge } from '../../frame/fieldEdges.ts';
import type { Repeat } from './leastRepeat.ts';

/** How far a wall may lie off a direction of the pattern to be read along it, in radians. */
const MOST_LEAN = 0.18;
/** Repeats upwards in which a direction is looked for, and sideways to either side: a half and what rounding makes of it. */
const REPEATS = 4;
const HALF = 0.501;
/** Repeats sideways of a pattern that lies in no courses: a long tile in herringbone may be a dozen times as long as wide. */
const FAR = 12;
/**
 * Of a pattern in no courses, what a longer repeat must be nearer to a wall by, in radians: by a hundredth of its length it
 * may be passed for a shorter one.
 */
const AS_NEAR = 0.01;

/** The directions of a pattern along which walls may be read. */
export interface Directions {
  /** Those in which its courses come round again. */
  readonly round: readonly Point[];
  /** Those in which one tile takes another's place. */
  readonly all: readonly Point[];
  readonly inCourses: boolean;
}

export function directionsOf(whole: Repeat & Pick<Pattern, 'inCourses'>, least: Repeat): Directions {
  if (!whole.inCourses) return { round: [], all: repeatsOf(least, FAR), inCourses: false };
  const area = least.a[0] * least.b[1] - least.a[1] * least.b[0];
  const isLeast = ([x, y]: Point) => {
    const [i, j] = [(x * least.b[1] - y * least.b[0]) / area, (y * least.a[0] - x * least.a[1]) / area];
    return commonDivisor(Math.round(i), Math.round(j)) === 1;
  };
  return { round: repeatsOf(whole).filter(isLeast), all: repeatsOf(least), inCourses: true };
}

/**
 * The direction of the pattern that an edge lies along: of those in which its courses come round again the shortest, where it lies along
 * none of them the shortest in which one tile takes another's place, or else the nearest to it. Of a pattern in no courses that after whose repeat
 * the wall is least off: one that is off every one of them has a long one, along which it sees nearly every phase alike.
 */
export function directionOf(edge: FieldEdge, { round, all, inCourses }: Directions): Point {
  if (!inCourses) return leastOff(edge, all);
  const along = round.filter((vector) => leanOf(edge, vector) <= MOST_LEAN);
  const tried = (along.length > 0 ? along : all).map((vector) => ({
    vector,
    lean: leanOf(edge, vector),
    length: Math.hypot(...vector),
  }));
  return tried.reduce((best, one) => (isNearer(one, best) ? one : best)).vector;
}

function leastOff(edge: FieldEdge, all: readonly Point[]): Point {
  const off = (vector: Point) => Math.hypot(...vector) * (leanOf(edge, vector) + AS_NEAR);
  return all.reduce((best, one) => (off(one) < off(best) - 1 ? one : best));
}

/**
 * Repeats of a pattern, of those one way the shortest: twice as long a one would have the rows beside it half as far away as they
 * are. In a mirror there are the same.
 */
function repeatsOf({ a, b }: Repeat, sideways = REPEATS): Point[] {
  const found: Point[] = [a];
  for (let j = 1; j <= REPEATS; j++) {
    const ahead = (j * (b[0] * a[0] + b[1] * a[1])) / (a[0] ** 2 + a[1] ** 2);
    const [from, to] = [Math.ceil(-sideways - HALF - ahead), Math.floor(sideways + HALF - ahead)];
    for (let i = from; i <= to; i++) {
      if (commonDivisor(i, j) === 1) found.push([i * a[0] + j * b[0], i * a[1] + j * b[1]]);
    }
  }
  return found;
}

/** Sine of the angle between an edge and a direction. */
export function leanOf({ from, to }: FieldEdge, [x, y]: Point): number {
  const [u, v] = [to[0] - from[0], to[1] - from[1]];
  return Math.abs(u * y - v * x) / (Math.hypot(u, v) * Math.hypot(x, y));
}

type Near = { readonly lean: number; readonly length: number };

function isNearer(one: Near, best: Near): boolean {
  const [fits, bestFits] = [one.lean <= MOST_LEAN, best.lean <= MOST_LEAN];
  if (fits !== bestFits) return fits;
  if (!fits) return one.lean < best.lean;
  return one.length < best.length - 1 || (one.length <= best.length + 1 && one.lean < best.lean);
}
