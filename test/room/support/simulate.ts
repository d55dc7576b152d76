import type { Point } from '../../../src/geometry/index.ts';
import type { SurfaceSpec } from '../../../src/job/Job.ts';
import type { Chance } from '../../support/chance.ts';
import { inch, surface, type Wish } from './surface.ts';

/** Which distances are read of a room, and how often each. */
export interface Plan {
  readonly corners: readonly Point[];
  readonly diagonals: readonly (readonly [number, number])[];
  readonly times: number;
  /** Legs of corner checks in inches, at every corner. */
  readonly checks?: readonly [number, number];
  /** Corners that are read from a snapped line as well. */
  readonly baseLine?: boolean;
}

export const letters = 'ABCDEFGHIJKLMNOP';

const inInches = (...pairs: readonly (readonly [number, number])[]) =>
  pairs.map(([x, y]): Point => [inch(x), inch(y)]);

export const quad = inInches([0, 0], [168, 0], [168, 120], [0, 120]);
export const ell = inInches([0, 0], [180, 0], [180, 60], [96, 60], [96, 108], [0, 108]);
export const ellDiagonals = [
  [0, 2],
  [0, 3],
  [0, 4],
  [1, 3],
  [1, 5],
  [3, 5],
] as const;

const distance = (a: Point, b: Point) => Math.hypot(b[0] - a[0], b[1] - a[1]);

/** The corners of a plan, each moved by up to an inch. */
export function crooked(corners: readonly Point[], by: Chance): Point[] {
  const shift = () => (2 * by.even() - 1) * inch(1);
  return corners.map(([x, y]): Point => [x + shift(), y + shift()]);
}

/** What a tape of this standard deviation reads of a true room. */
export function readRoom(truth: readonly Point[], plan: Plan, sd: number, by: Chance): SurfaceSpec {
  const n = truth.length;
  const read = (length: number) =>
    Array.from({ length: plan.times }, () => Math.round(length + sd * by.normal()));
  const entry = (i: number, j: number) =>
    [`${letters[i]}-${letters[j]}`, read(distance(truth[i]!, truth[j]!))] as const;
  const wish: Wish = {
    walls: Object.fromEntries(truth.map((_, i) => entry(i, (i + 1) % n))),
    diagonals: Object.fromEntries(plan.diagonals.map(([i, j]) => entry(i, j))),
    angles: n === 6 ? { D: 270 } : {},
    cornerChecks: plan.checks ? truth.map((_, i) => checkAt(truth, i, plan.checks!, read)) : [],
    baseLine: plan.baseLine ? lineReadings(truth, sd, by) : [],
    precision: { kind: 'stated', sd: inch(1 / 8) },
  };
  return surface(wish);
}

function checkAt(
  truth: readonly Point[],
  i: number,
  legs: readonly [number, number],
  read: (length: number) => number[],
) {
  const n = truth.length;
  const mark = (to: Point, leg: number): Point => {
    const at = truth[i]!;
    const share = inch(leg) / distance(at, to);
    return [at[0] + share * (to[0] - at[0]), at[1] + share * (to[1] - at[1])];
  };
  const [a, b] = [mark(truth[(i + n - 1) % n]!, legs[0]), mark(truth[(i + 1) % n]!, legs[1])];
  return { corner: letters[i]!, legs, read: read(distance(a, b)) };
}

/** A line a foot off the first wall and a little askew. */
function lineReadings(truth: readonly Point[], sd: number, by: Chance) {
  const [turn, x, y] = [0.01, inch(-3), inch(12)];
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  return truth.map(([px, py], i) => ({
    corner: letters[i]!,
    along: Math.round(c * (px - x) + s * (py - y) + sd * by.normal()),
    off: Math.round(c * (py - y) - s * (px - x) + sd * by.normal()),
  }));
}

/** By how much each corner is out when both rooms are laid on each other as well as can be: root mean square of the plane. */
export function cornerErrors(found: readonly Point[], truth: readonly Point[]): number[] {
  const middle = (points: readonly Point[], axis: 0 | 1) =>
    points.reduce((sum, p) => sum + p[axis], 0) / points.length;
  const centred = (points: readonly Point[]) => {
    const [mx, my] = [middle(points, 0), middle(points, 1)];
    return points.map(([x, y]): Point => [x - mx, y - my]);
  };
  const [p, q] = [centred(found), centred(truth)];
  const across = p.reduce((sum, [x, y], i) => sum + x * q[i]![1] - y * q[i]![0], 0);
  const straight = p.reduce((sum, [x, y], i) => sum + x * q[i]![0] + y * q[i]![1], 0);
  const [c, s] = [Math.cos(Math.atan2(across, straight)), Math.sin(Math.atan2(across, straight))];
  return p.map(([x, y], i) => Math.hypot(c * x - s * y - q[i]![0], s * x + c * y - q[i]![1]));
}

/** The same with a slip in one reading of a wall or a diagonal, and in which. */
export function slippedOnce(spec: SurfaceSpec, slip: number, by: Chance) {
  const all = [...spec.walls, ...spec.diagonals];
  const { id, readings } = all[by.below(all.length)]!;
  const which = by.below(readings.length);
  const change = <One extends { readonly id: string; readonly readings: readonly number[] }>(
    one: One,
  ): One =>
    one.id === id
      ? { ...one, readings: one.readings.map((read, k) => (k === which ? read + slip : read)) }
      : one;
  return {
    spec: { ...spec, walls: spec.walls.map(change), diagonals: spec.diagonals.map(change) },
    id,
    which,
  };
}
