import type { Point } from '../geometry/index.ts';
import { type BaseLine, seenFrom } from './baseLine.ts';
import type { CornerDistance, Distance, LineOffset, Observation } from './observations.ts';

/** One line of the design matrix at given corners: how the observed value changes with each unknown. */
export interface DesignRow {
  readonly coefficients: readonly number[];
  /** Observed less computed, in ticks. */
  readonly misfit: number;
  /** Number of readings behind it over the square of their standard deviation. */
  readonly weight: number;
}

/** Corners and the base line, where there is one, as far as they are known. */
export interface Placed {
  readonly corners: readonly Point[];
  readonly line?: BaseLine;
}

/** Corners on the line of their neighbours, by number, and how sure that is. */
export interface Straight {
  readonly corners: readonly number[];
  readonly sd: number;
}

/** Unknowns of n corners: all coordinates but the first corner's and the second one's y. */
export function unknownCount(corners: number): number {
  return 2 * corners - 3;
}

/** Place of a coordinate among the unknowns; negative for the three that are held. */
export function unknownAt(corner: number, axis: 0 | 1): number {
  if (corner === 0) return -1;
  if (corner === 1) return axis === 0 ? 0 : -1;
  return 2 * corner - 3 + axis;
}

/** A base line adds three: its zero and its turn, in units of this many ticks at the end of such a lever. */
export const lever = 1e6;

/** All unknowns: of the corners, and three more where there is a base line. */
export const allUnknowns = ({ corners, line }: Placed) => unknownCount(corners.length) + (line ? 3 : 0);

type Parts = readonly (readonly [corner: number, by: Point])[];

function spread(total: number, parts: Parts): number[] {
  const row = new Array<number>(total).fill(0);
  for (const [corner, by] of parts) {
    for (const axis of [0, 1] as const) {
      const at = unknownAt(corner, axis);
      if (at >= 0) row[at]! += by[axis];
    }
  }
  return row;
}

function direction(a: Point, b: Point) {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const length = Math.hypot(dx, dy);
  return { length, unit: [dx / length, dy / length] as const };
}

const minus = ([x, y]: Point): Point => [-x, -y];

/** How the distance between two corners changes when they move. */
export function distanceParts(corners: readonly Point[], from: number, to: number): Parts {
  const { unit } = direction(corners[from]!, corners[to]!);
  return [
    [from, minus(unit)],
    [to, unit],
  ];
}

/** Row of the distance between two corners. */
export function distanceRow(placed: Placed, from: number, to: number): number[] {
  return spread(allUnknowns(placed), distanceParts(placed.corners, from, to));
}

function distance(placed: Placed, { from, to }: Distance) {
  const { length } = direction(placed.corners[from]!, placed.corners[to]!);
  return { coefficients: distanceRow(placed, from, to), computed: length };
}

/** The third side of the triangle of both legs: it changes with the angle between the walls alone. */
function cornerDistance(placed: Placed, { corner, before, after }: CornerDistance) {
  const { corners } = placed;
  const n = corners.length;
  const [prior, next] = [(corner + n - 1) % n, (corner + 1) % n];
  const [back, on] = [
    direction(corners[corner]!, corners[prior]!),
    direction(corners[corner]!, corners[next]!),
  ];
  const cos = back.unit[0] * on.unit[0] + back.unit[1] * on.unit[1];
  const sin = on.unit[0] * back.unit[1] - on.unit[1] * back.unit[0];
  const computed = Math.sqrt(before * before + after * after - 2 * before * after * cos);
  const perRadian = (before * after * sin) / Math.max(computed, 1);
  const turnBack = ([x, y]: Point, length: number): Point => [
    (-perRadian * y) / length,
    (perRadian * x) / length,
  ];
  const [a, b] = [turnBack(back.unit, back.length), minus(turnBack(on.unit, on.length))];
  const parts: Parts = [
    [prior, a],
    [next, b],
    [corner, [-a[0] - b[0], -a[1] - b[1]]],
  ];
  return { coefficients: spread(allUnknowns(placed), parts), computed };
}

function lineOffset(placed: Placed, { corner, axis }: LineOffset) {
  const line = placed.line!;
  const at = placed.corners[corner]!;
  const seen = seenFrom(line, at);
  const [c, s] = [Math.cos(line.turn), Math.sin(line.turn)];
  const by: Point = axis === 'along' ? [c, s] : [-line.hand * s, line.hand * c];
  const turned = axis === 'along' ? line.hand * seen[1] : -line.hand * seen[0];
  const coefficients = spread(allUnknowns(placed), [[corner, by]]);
  coefficients.splice(-3, 3, -by[0], -by[1], turned / lever);
  return { coefficients, computed: seen[axis === 'along' ? 0 : 1] };
}

function computedRow(placed: Placed, one: Observation) {
  if (one.kind === 'cornerCheck') return cornerDistance(placed, one);
  return one.kind === 'baseLine' ? lineOffset(placed, one) : distance(placed, one);
}

function observedRow(placed: Placed, one: Observation): DesignRow {
  const { coefficients, computed } = computedRow(placed, one);
  return { coefficients, misfit: one.mean - computed, weight: one.read.length / one.sd ** 2 };
}

/** A corner of 180 degrees lies on the line of its neighbours, as good as one reading. */
function straightRow(placed: Placed, at: number, sd: number): DesignRow {
  const { corners } = placed;
  const n = corners.length;
  const [before, after] = [(at + n - 1) % n, (at + 1) % n];
  const [a, p, b] = [corners[before]!, corners[at]!, corners[after]!];
  const { length, unit } = direction(a, b);
  const [ux, uy] = unit;
  const along = ((p[0] - a[0]) * ux + (p[1] - a[1]) * uy) / length;
  const parts: Parts = [
    [at, [-uy, ux]],
    [before, [uy * (1 - along), -ux * (1 - along)]],
    [after, [uy * along, -ux * along]],
  ];
  return {
    coefficients: spread(allUnknowns(placed), parts),
    misfit: (p[0] - a[0]) * uy - (p[1] - a[1]) * ux,
    weight: 1 / sd ** 2,
  };
}

/** All rows: one for everything that was read, in its order, then one a straight corner. */
export function designRows(placed: Placed, seen: readonly Observation[], straight: Straight): DesignRow[] {
  return [
    ...seen.map((one) => observedRow(placed, one)),
    ...straight.corners.map((corner) => straightRow(placed, corner, straight.sd)),
  ];
}
