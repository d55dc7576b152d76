import type { Point } from '../../../geometry/index.ts';
import type { Pattern } from '../../../pattern/Pattern.ts';
import { breakPhases } from './breakPhases.ts';
import { liesAslant } from './liesAslant.ts';
import type { PlaceQuestion } from './PlaceQuestion.ts';
import { phaseTable } from './phaseTable.ts';
import { remembered } from './remembered.ts';
import { scoreAt } from './scoreAt.ts';
import type { WallDirection } from './WallReading.ts';

/** Where the job leaves a place open: a fixed coordinate of the origin, or none. */
export type Fixed = readonly [number | undefined, number | undefined];

/** One part of the search, and the origin that a place of it means, given the origin so far. */
export interface WallPart {
  readonly question: PlaceQuestion;
  readonly toOrigin: (place: Point, origin: Point) => Point;
}

/** How far a coordinate of the origin is off balance, in ticks; none where no run says. */
export type OffBalance = (position: number, axis: 0 | 1) => number;

/** What all parts of a search are asked alike. */
export interface PartWishes {
  readonly offBalance: OffBalance;
  readonly slack: PlaceQuestion['slack'];
}

/** How a pattern repeats. */
type Repeats = Pick<Pattern, 'a' | 'b'>;

type Along = (origin: Point) => number;
const along =
  ([nx, ny]: Point): Along =>
  ([x, y]) =>
    nx * x + ny * y;

/**
 * The search parted as far as walls allow: walls of two directions do not mind each other, so that each is searched alone along one
 * coordinate; walls of three are searched together over one repeat of the pattern.
 */
export function wallParts(
  directions: readonly WallDirection[],
  pattern: Repeats,
  fixed: Fixed,
  wishes: PartWishes,
): WallPart[] {
  const [x, y] = fixed;
  if (x !== undefined && y !== undefined) return [];
  if (x !== undefined || y !== undefined) return [onLine(directions, pattern, fixed, wishes)];
  if (directions.length <= 2) return directions.map((one) => alone(one, directions, wishes));
  return [together(directions, pattern, wishes)];
}

function scoresOf(direction: WallDirection) {
  return remembered((phase, reach, floor) => scoreAt(direction, phase, reach, floor));
}

/** Boxes that a search may look at: so many at most, and fewer where a look means many places on walls. */
const MOST_BOXES = 12_000;
const MOST_READINGS = 400_000;
/** Along a line that walls of several directions see, a search that is long comes to its end still. */
const MOST_ON_LINE = 2_400_000;

function boxesFor(directions: readonly WallDirection[], most = MOST_READINGS): number {
  const readings = directions.reduce((sum, one) => sum + one.readings.length * one.ahead.length, 0);
  return Math.min(MOST_BOXES, Math.ceil(most / Math.max(1, readings)));
}

/** Along the normal of one direction, the place along the other's kept. */
function alone(
  direction: WallDirection,
  all: readonly WallDirection[],
  { offBalance, slack }: PartWishes,
): WallPart {
  const other = all.find((one) => one !== direction);
  const { normal } = direction;
  const aside: Point = other?.normal ?? [-normal[1], normal[0]];
  const cross = normal[0] * aside[1] - normal[1] * aside[0];
  const axis = [0, 1].find((one) => Math.abs(normal[one]!) > 1 - 1e-9) as 0 | 1 | undefined;
  return {
    question: {
      directions: [{ scores: scoresOf(direction), row: [1, 0], at: 0 }],
      low: [0, 0],
      high: [Math.ceil(direction.spacing), 0],
      seeds: breakPhases(direction).map((phase): Point => [phase, 0]),
      boxes: boxesFor([direction]),
      slack,
      ...(axis !== undefined && { offBalance: ([phase]: Point) => offBalance(phase / normal[axis], axis) }),
    },
    toOrigin: ([phase], origin) => {
      const kept = along(aside)(origin);
      return [(phase * aside[1] - kept * normal[1]) / cross, (kept * normal[0] - phase * aside[0]) / cross];
    },
  };
}

/** One coordinate of the origin is given. */
function onLine(
  directions: readonly WallDirection[],
  { a, b }: Repeats,
  [x, y]: Fixed,
  { offBalance, slack }: PartWishes,
): WallPart {
  const axis = x === undefined ? 0 : 1;
  const given: Point = axis === 0 ? [0, y!] : [x!, 0];
  const moved = directions.filter(({ normal }) => Math.abs(normal[axis]) > 1e-9);
  const high = repeatOn(axis, a, b);
  // Then there is much to look at along the line, and a table of all stretches is worth its while.
  const slantwise = directions.some(liesAslant);
  const seeds = moved.flatMap((direction) =>
    breakPhases(direction).map((phase): Point => {
      const place = (phase - along(direction.normal)(given)) / direction.normal[axis];
      return [Math.round(place - Math.floor(place / high) * high), 0];
    }),
  );
  return {
    question: {
      directions: directions.map((direction) => ({
        scores: slantwise ? remembered(phaseTable(direction)) : scoresOf(direction),
        row: [direction.normal[axis], 0],
        at: along(direction.normal)(given),
      })),
      low: [0, 0],
      high: [Math.ceil(high), 0],
      seeds,
      boxes: boxesFor(directions, MOST_ON_LINE),
      slack,
      offBalance: ([place]) => offBalance(place, axis),
    },
    toOrigin: ([place]) => (axis === 0 ? [place, given[1]] : [given[0], place]),
  };
}

/** Repeats each way among which one straight along an axis is looked for. */
const MOST_REPEATS = 24;

/** The way straight along an axis after which a pattern repeats; where it never quite does, a dozen repeats. */
function repeatOn(axis: 0 | 1, a: Point, b: Point): number {
  const aside = 1 - axis;
  let least = Infinity;
  for (let i = -MOST_REPEATS; i <= MOST_REPEATS; i++) {
    for (let j = -MOST_REPEATS; j <= MOST_REPEATS; j++) {
      const ahead = Math.abs(i * a[axis] + j * b[axis]);
      if (ahead > 2 && ahead < least && Math.abs(i * a[aside]! + j * b[aside]!) < 2) least = ahead;
    }
  }
  return least < Infinity ? least : 12 * Math.max(...[a, b].map((one) => Math.abs(one[axis])));
}

/** Places where walls of two directions both change are tried first. */
const MOST_SEEDS = 1000;

function together(
  directions: readonly WallDirection[],
  { a, b }: Repeats,
  { offBalance, slack }: PartWishes,
): WallPart {
  const [wide, deep] = [Math.hypot(...a), Math.hypot(...b)];
  const unit: Point = [a[0] / wide, a[1] / wide];
  const other: Point = [b[0] / deep, b[1] / deep];
  const toOrigin = ([u, v]: Point): Point => [u * unit[0] + v * other[0], u * unit[1] + v * other[1]];
  const rows = directions.map((direction) => ({
    scores: remembered(phaseTable(direction)),
    breaks: breakPhases(direction),
    row: [along(direction.normal)(unit), along(direction.normal)(other)] as Point,
    at: 0,
  }));
  return {
    question: {
      directions: rows,
      low: [0, 0],
      high: [Math.ceil(wide), Math.ceil(deep)],
      seeds: crossings(rows, wide, deep).slice(0, MOST_SEEDS),
      boxes: boxesFor(directions),
      slack,
      offBalance: (place) => {
        const [u, v] = toOrigin(place);
        return offBalance(u, 0) + offBalance(v, 1);
      },
    },
    toOrigin,
  };
}

type Row = PlaceQuestion['directions'][number] & { readonly breaks: readonly number[] };

function crossings(rows: readonly Row[], wide: number, deep: number): Point[] {
  const wrap = (value: number, by: number) => Math.round(value - Math.floor(value / by) * by);
  return rows.flatMap((one, i) =>
    rows.slice(i + 1).flatMap((other) => {
      const cross = one.row[0] * other.row[1] - one.row[1] * other.row[0];
      if (Math.abs(cross) < 0.05) return [];
      return one.breaks.flatMap((p) =>
        other.breaks.map(
          (q): Point => [
            wrap((p * other.row[1] - q * one.row[1]) / cross, wide),
            wrap((q * one.row[0] - p * other.row[0]) / cross, deep),
          ],
        ),
      );
    }),
  );
}
