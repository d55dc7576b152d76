import {
  distancePointSegment,
  distanceSegments,
  pointInRing,
  type Ring,
  ringArea,
  type Shape,
  shapeArea,
} from '../../geometry/index.ts';
import { TICKS_PER_INCH, type Ticks } from '../../measure/index.ts';
import { aheadOfFace, distanceToFace, type Face, stretchesOf } from '../frame/Face.ts';

/** Never less gap than this beside a tile that stays whole: ANSI A108.02 §4.4 as reported. */
export const LEAST_GAP: Ticks = TICKS_PER_INCH / 8;
/** A tile stays whole where it takes no more of the gap than this; common practice, no source. */
export const GAP_GIVE: Ticks = TICKS_PER_INCH / 16;
/** What rounding alone can do to a gap. */
export const ROUNDING: Ticks = 2;

/**
 * The gap that must be left, of a gap that is wanted, for a tile to stay whole beside it. All in ticks.
 *
 * @example gapEnough(2032) //=> 1524
 * @example gapEnough(1016) //=> 1014
 */
export function gapEnough(gap: Ticks): Ticks {
  return Math.min(Math.max(LEAST_GAP, gap - GAP_GIVE), gap - ROUNDING);
}

/**
 * Whether a tile that reaches into the gaps of the given faces may stay whole all the same: at each of them
 * the gap that is left must be enough. Gives the smallest gap left and its face, or null. A tile that only
 * rounding put over the line keeps its full gap.
 */
export function keptGap(
  ring: Ring,
  inField: readonly Shape[],
  faces: readonly Face[],
  concerned: readonly number[],
): { face: number; gap: Ticks } | null {
  if (inField.length !== 1 || !nearlyAll(ring, inField[0]!)) return null;
  let least = { face: concerned[0]!, gap: Infinity };
  for (const index of concerned) {
    const face = faces[index]!;
    const gap = tileToFace(ring, face);
    if (gap < leastGap(face)) return null;
    if (gap < least.gap) least = { face: index, gap };
  }
  const { gap: full } = faces[least.face]!;
  return { face: least.face, gap: least.gap >= full - ROUNDING ? full : Math.round(least.gap) };
}

/** At a border the gap is a joint like all others, and none of it is given. */
function leastGap({ meets, gap }: Face): Ticks {
  return meets === 'border' ? gap - ROUNDING : gapEnough(gap);
}

/** Saves measuring: what reaches over by 1/16 in at most loses no more than that along its sides. */
function nearlyAll(ring: Ring, shape: Shape): boolean {
  const lost = ringArea(ring) - shapeArea(shape);
  // Sides told too long, each by the legs of its corner, rule out most pieces without a root.
  return lost <= GAP_GIVE * lengthBy(ring, legs) && lost <= GAP_GIVE * lengthBy(ring, Math.hypot);
}

const legs = (x: number, y: number) => Math.abs(x) + Math.abs(y);

function lengthBy(ring: Ring, length: (x: number, y: number) => number): number {
  let sum = 0;
  for (let i = 0; i < ring.length; i++) {
    const [[x, y], [u, v]] = [ring[i]!, ring[i + 1 === ring.length ? 0 : i + 1]!];
    sum += length(u - x, v - y);
  }
  return sum;
}

/** Distance of a tile from a face; less than 0, by how far it reaches beyond, where it touches or crosses it. */
function tileToFace(ring: Ring, face: Face): number {
  if (face.curve) return tileToCurve(ring, face);
  // A pipe or a post that stands in the middle of a tile is far from all its sides, and still in it.
  if (face.circle && pointInRing(face.circle.centre, ring)) return -face.circle.radius;
  const distances = ring.map((point, i) => {
    const next = ring[(i + 1) % ring.length]!;
    return face.circle
      ? nearestToCircle(face, point, next)
      : distanceSegments(point, next, face.from, face.to);
  });
  const least = Math.min(...distances);
  if (least > 0 && !face.circle && pointInRing(face.from, ring)) return -least;
  return least > 0 || face.circle ? least : Math.min(...ring.map((point) => aheadOfFace(face, point)));
}

function nearestToCircle(face: Face, a: Ring[number], b: Ring[number]): number {
  const { centre } = face.circle!;
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const part = ((centre[0] - a[0]) * dx + (centre[1] - a[1]) * dy) / (dx * dx + dy * dy);
  const at = Math.min(1, Math.max(0, part));
  return distanceToFace(face, [a[0] + at * dx, a[1] + at * dy]);
}

/** A curve reaches into a tile with its bends, or the tile's corners reach over it. */
function tileToCurve(ring: Ring, face: Face): number {
  const stretches = stretchesOf(face);
  const least = Math.min(...stretches.map((stretch) => tileToFace(ring, stretch)));
  if (least > 0) return least;
  const bends = face.curve!.points.filter((point) => pointInRing(point, ring));
  const sides = ring.map((point, i) => [point, ring[(i + 1) % ring.length]!] as const);
  const depths = bends.map((bend) => Math.min(...sides.map(([p, q]) => distancePointSegment(bend, p, q))));
  const over = ring
    .filter((corner) => isBehind(corner, stretches))
    .map((corner) => distanceToFace(face, corner));
  return 0 - Math.max(0, ...depths, ...over);
}

/** Whether a point lies on the wall's side of the stretch that is nearest to it. */
function isBehind(point: Ring[number], stretches: readonly Face[]): boolean {
  const away = stretches.map(({ from, to }) => distancePointSegment(point, from, to));
  return aheadOfFace(stretches[away.indexOf(Math.min(...away))]!, point) < 0;
}
