import { bounds, type Point } from '../../../geometry/index.ts';
import { TICKS_PER_INCH } from '../../../measure/index.ts';
import type { Pattern } from '../../../pattern/Pattern.ts';
import { leastStrip } from '../../faults/limits.ts';
import type { FieldEdge } from '../../frame/fieldEdges.ts';
import type { Ground } from '../../frame/Ground.ts';
import { gapEnough } from '../../pieces/keptGap.ts';
import { cutProfile } from './cutProfile.ts';
import { directionOf, directionsOf, leanOf } from './directionOf.ts';
import { leastRepeat, type Repeat } from './leastRepeat.ts';
import { setOut } from './setOut.ts';
import type { WallDirection, WallReading } from './WallReading.ts';

/** A wall that leans is read at places that differ by no more than this, and at no more places than `MOST_PLACES`. */
const STEP = TICKS_PER_INCH / 16;
const MOST_PLACES = 24;
/** A wall that leans by no more than this, in ticks, does not. */
const ROUNDING = 4;
/** What is left out or stays whole does so by at least this, in ticks, so that a line that is a little off makes no sliver of it. */
const CLEAR = 32;
/** The same where a longer wall has chosen the direction. */
const SHARED_LEAN = 0.26;
/** Of all the wall in sight: a third direction with less than this is judged by its pieces only. */
const LEAST_PART = 0.12;

/** The walls that can be seen, each read square to the direction of the pattern that it lies along. */
export function wallDirections(ground: Ground, whole: Pattern): WallDirection[] {
  const pattern = leastRepeat(whole);
  const seen = ground.edges.filter(({ face }) => {
    const { circle, seen } = ground.faces[face]!;
    return !circle && seen !== 'hidden';
  });
  const directions = directionsOf(whole, pattern);
  const own = new Map(seen.map((edge) => [edge, directionOf(edge, directions)]));
  const found = vectorsOf(own).map((vector) => ({ vector, readings: [] as WallReading[], length: 0 }));
  for (const edge of seen) {
    const key = keyOf(own.get(edge)!);
    const known = found.find(({ vector }) => keyOf(vector) === key || leanOf(edge, vector) <= SHARED_LEAN)!;
    known.readings.push(...readingsOf(edge, ground, normalOf(known.vector), pattern));
    known.length += lengthOf(edge);
  }
  const least = LEAST_PART * seen.reduce((sum, edge) => sum + lengthOf(edge), 0);
  return found
    .filter(({ length }) => length > 0)
    .filter(({ length }, i) => i < 2 || length >= least)
    .map(({ vector, readings }) => directionAlong(vector, readings, ground, pattern));
}

function directionAlong(
  vector: Point,
  readings: readonly WallReading[],
  ground: Ground,
  { a, b, tiles, joint }: Repeat,
): WallDirection {
  const normal = normalOf(vector);
  const repeat = Math.hypot(...vector);
  const off = setOut(ground);
  const profiles = (facing: Point) =>
    tiles.map(({ ring }) => {
      const strip = leastStrip(ring, ground);
      return cutProfile({ ring, joint, repeat, minShare: ground.minShare, strip }, facing);
    });
  return {
    normal,
    setOut: off,
    margin: ground.tolerance.lines - off,
    spacing: (a[0] * b[1] - a[1] * b[0]) / repeat,
    ahead: profiles(normal),
    behind: profiles([-normal[0], -normal[1]]),
    readings,
  };
}

/** The directions that edges lie along, that with the most length of wall first: walls that lie nearly so need none of their own. */
function vectorsOf(own: ReadonlyMap<FieldEdge, Point>): Point[] {
  const lengths = new Map<string, { vector: Point; length: number }>();
  for (const [edge, vector] of own) {
    const known = lengths.get(keyOf(vector)) ?? { vector, length: 0 };
    lengths.set(keyOf(vector), { vector: known.vector, length: known.length + lengthOf(edge) });
  }
  return [...lengths.values()].sort((a, b) => b.length - a.length).map(({ vector }) => vector);
}

/** Directions that differ by rounding are one. */
function keyOf([x, y]: Point): string {
  return `${Math.round(x)} ${Math.round(y)}`;
}

function lengthOf({ from, to }: FieldEdge): number {
  return Math.hypot(to[0] - from[0], to[1] - from[1]);
}

/** A quarter turn from the direction; the two ways are told apart by the reading's side. */
function normalOf([x, y]: Point): Point {
  const length = Math.hypot(x, y);
  return [-y / length + 0, x / length + 0];
}

/** The field is on the left of its edge; ends count half, as in any sum by trapezoids. */
function readingsOf(
  { from, to, face: index }: FieldEdge,
  { faces, focalWeight }: Ground,
  normal: Point,
  pattern: Repeat,
): WallReading[] {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const [leftX, leftY] = [-(to[1] - from[1]), to[0] - from[0]];
  const side = leftX * normal[0] + leftY * normal[1] >= 0 ? 1 : -1;
  const at = ([x, y]: Point) => side * (x * normal[0] + y * normal[1]);
  const face = faces[index]!;
  // Where the eye falls the same fault weighs more.
  const weight = face.seen === 'focal' || face.doorway ? focalWeight : 1;
  const lean = Math.abs(at(to) - at(from));
  const leans = lean <= ROUNDING ? 0 : Math.ceil(lean / STEP);
  // A chord of a curve is one of many.
  const most = face.curve ? Math.floor((2 * length) / longestSide(pattern)) : MOST_PLACES;
  const steps = Math.min(MOST_PLACES, leans, most);
  const shared = {
    side,
    absent: Math.max(0, face.gapMax - face.gap - pattern.joint) - CLEAR,
    kept: Math.max(0, face.gap - gapEnough(face.gap) - CLEAR),
    counts: length >= longestSide(pattern),
  } as const;
  if (steps === 0) return [{ ...shared, at: (at(from) + at(to)) / 2, length: length * weight }];
  return Array.from({ length: steps + 1 }, (_, i) => ({
    ...shared,
    at: at(from) + (i / steps) * (at(to) - at(from)),
    length: ((i === 0 || i === steps ? 0.5 : 1) * length * weight) / steps,
  }));
}

function longestSide({ tiles }: Repeat): number {
  const { minX, minY, maxX, maxY } = bounds(tiles[0]!.ring);
  return Math.max(maxX - minX, maxY - minY);
}
