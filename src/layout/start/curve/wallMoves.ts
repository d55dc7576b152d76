import type { Point } from '../../../geometry/index.ts';
import { TICKS_PER_INCH, type Ticks } from '../../../measure/index.ts';
import type { Repeat } from '../search/leastRepeat.ts';
import type { WallDirection, WallReading } from '../search/WallReading.ts';

/** A cut that is to share a tile is made less by this, in ticks: the start may be moved by a saw step on either axis so that it can be named. */
const EASE: Ticks = TICKS_PER_INCH / 16;
/** Places spread evenly over the spacing that the walls of a direction see, beside those that their cuts ask for: so many, then those half way between, and so on. */
const EVENLY = 6;
const HALVINGS = 2;
/** Places nearer than this are one. */
const SAME: Ticks = TICKS_PER_INCH / 8;
/** How many starts that the walls see alike are told apart: what differs is in the corners. */
const MOST_ALIKE = 8;
/** Walls that a move along an axis brings nearer by less than this part of it do not see it. */
const LEAST_SEEN = 0.1;

/** Moves of a pattern that is not told course by course, from where it stands. */
export interface WallMoves {
  /** For the walls of one direction each, those of the other staying as they are; the first is none at all. */
  readonly lists: readonly (readonly Point[])[];
  /** After which all walls look as before, none at all among them. */
  readonly alike: readonly Point[];
}

/**
 * Moves of a pattern after which its tiles may be shared otherwise: where the cuts along a wall become half of what is left of another
 * tile, where a row of them is left out, and places spread evenly in between.
 *
 * @param from where it stands; `free` tells on which axes it may be moved, one at least; `kerf` is the saw's.
 */
export function wallMoves(
  directions: readonly WallDirection[],
  { from, free, kerf, repeat }: { from: Point; free: readonly boolean[]; kerf: Ticks; repeat: Repeat },
): WallMoves {
  if (!free[0] || !free[1]) return onOneAxis(directions, from, kerf, free[0] ? 0 : 1);
  const phases = directions.slice(0, 2).map((one) => movesAlong(one, from, kerf));
  const [one, other] = directions;
  if (!one || !other)
    return { lists: phases.map((moves) => moves.map((by) => along(one!.normal, by))), alike: [[0, 0]] };
  const cross = one.normal[0] * other.normal[1] - one.normal[1] * other.normal[0];
  const first: Point = [other.normal[1] / cross, -other.normal[0] / cross];
  const second: Point = [-one.normal[1] / cross, one.normal[0] / cross];
  const { a, b } = repeat;
  const area = a[0] * b[1] - a[1] * b[0];
  const count = Math.round((area * Math.abs(cross)) / (one.spacing * other.spacing));
  return {
    lists: [first, second].map((way, k) => phases[k]!.map((by) => along(way, by))),
    alike: Array.from({ length: Math.max(1, Math.min(MOST_ALIKE, count)) }, (_, i) =>
      along(first, i * one.spacing),
    ),
  };
}

/** Where the job holds the other axis: moves for all walls that see them, and by whole spacings of those that see the pattern repeat soonest. */
function onOneAxis(directions: readonly WallDirection[], from: Point, kerf: Ticks, axis: 0 | 1): WallMoves {
  const seen = directions.filter(({ normal }) => Math.abs(normal[axis]) > LEAST_SEEN);
  const list = seen.flatMap((one) =>
    movesAlong(one, from, kerf).map((by) => onAxis(by / one.normal[axis], axis)),
  );
  const step = Math.min(...seen.map(({ spacing, normal }) => spacing / Math.abs(normal[axis])));
  const alike = Array.from({ length: seen.length > 0 ? MOST_ALIKE : 1 }, (_, i) =>
    onAxis(i * step || 0, axis),
  );
  return { lists: [list], alike };
}

const along = ([x, y]: Point, by: number): Point => [by * x, by * y];
const onAxis = (by: number, axis: 0 | 1): Point => (axis === 0 ? [by, 0] : [0, by]);

/** How far along its normal the pattern is moved for the walls of a direction, by less than half the spacing either way. */
function movesAlong(direction: WallDirection, from: Point, kerf: Ticks): number[] {
  const { normal, spacing, readings } = direction;
  const now = normal[0] * from[0] + normal[1] * from[1];
  const asked = outermost(readings).flatMap((one) => phasesAt(one, direction, kerf));
  const evenly = Array.from({ length: HALVINGS + 1 }, (_, n) => n).flatMap((n) => {
    const places = EVENLY * 2 ** n;
    return Array.from({ length: places }, (_, i) => now + (i * spacing) / places);
  });
  const kept: number[] = [];
  for (const phase of [now, ...asked, ...evenly]) {
    const by = phase - now - Math.round((phase - now) / spacing) * spacing;
    if (!kept.some((known) => Math.abs(known - by) < SAME)) kept.push(by);
  }
  return kept;
}

/** Where the tile that reaches least past a wall is cut to half of what another leaves, or is left out. */
function phasesAt(
  { at, side, absent }: WallReading,
  { ahead, behind, spacing }: WallDirection,
  kerf: Ticks,
): number[] {
  return (side > 0 ? ahead : behind).flatMap(({ top, depth }) => {
    const sizes = [absent - EASE];
    for (let left = depth - kerf; left > 0; left -= spacing) sizes.push(left / 2 - EASE);
    return sizes.filter((size) => size > 0 && size <= spacing).map((size) => side * (size + at - top));
  });
}

/** Of the readings of each wall that leans the two at its ends: all of its cuts lie between them. */
function outermost(readings: readonly WallReading[]): WallReading[] {
  const found: WallReading[] = [];
  const sorted = [...readings].sort((a, b) => a.side - b.side || a.at - b.at);
  sorted.forEach((one, i) => {
    const [before, after] = [sorted[i - 1], sorted[i + 1]];
    const isNext = (other: WallReading | undefined) =>
      other && other.side === one.side && Math.abs(other.at - one.at) < TICKS_PER_INCH;
    if (!isNext(before) || !isNext(after)) found.push(one);
  });
  return found;
}
