import type { Point } from './Point.ts';
import type { Ring } from './Ring.ts';
import { unitAlong } from './unitAlong.ts';

/** Straight lines that stand for a curved wall keep within 63 ticks of it, and their ends were rounded. */
const ON_CIRCLE = 70;

/** Edges of a ring, one after the other, that follow a circle. */
export interface CircleRun {
  /** Numbers of the points where it begins and ends; edge i runs from point i to the next. */
  readonly first: number;
  readonly last: number;
  /** How far the circle bulges over the straight line from end to end, and where it does so most. */
  readonly depth: number;
  readonly middle: Point;
}

/**
 * The runs of a ring's edges along a circle that stands for a curved wall. `counts` leaves edges out that lie near
 * it for another reason.
 *
 * @example circleRuns([[0, 0], [800, 0], [800, 400], [600, 480], [400, 500], [0, 300]], { centre: [400, 0], radius: 500 }).map(({ first, last }) => [first, last]) //=> [[2, 5]]
 */
export function circleRuns(
  ring: Ring,
  circle: { readonly centre: Point; readonly radius: number },
  counts: (from: Point, to: Point) => boolean = () => true,
): CircleRun[] {
  const n = ring.length;
  const next = (i: number) => (i + 1) % n;
  const on = ring.map((from, i) => follows(from, ring[next(i)]!, circle) && counts(from, ring[next(i)]!));
  return on.flatMap((is, first): CircleRun[] => {
    if (!is || on[(first + n - 1) % n]) return [];
    let last = first;
    while (on[last]) last = next(last);
    return [{ first, last, ...bulge(ring[first]!, ring[last]!, circle) }];
  });
}

function follows(a: Point, b: Point, { centre, radius }: { centre: Point; radius: number }): boolean {
  const middle: Point = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
  return [a, middle, b].every(
    ([x, y]) => Math.abs(Math.hypot(x - centre[0], y - centre[1]) - radius) <= ON_CIRCLE,
  );
}

function bulge(
  from: Point,
  to: Point,
  { centre, radius }: { centre: Point; radius: number },
): Pick<CircleRun, 'depth' | 'middle'> {
  const half = Math.hypot(to[0] - from[0], to[1] - from[1]) / 2;
  const depth = (half * half) / (radius + Math.sqrt(Math.max(0, radius * radius - half * half)));
  const chord: Point = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
  const [ux, uy] = unitAlong(centre, chord);
  return { depth, middle: [Math.round(chord[0] + ux * depth), Math.round(chord[1] + uy * depth)] };
}
