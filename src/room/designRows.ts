import type { Point } from '../geometry/index.ts';
import type { Observation } from './observations.ts';

/** One line of the design matrix at given corners: how the observed value changes with each unknown. */
export interface DesignRow {
  readonly coefficients: readonly number[];
  /** Observed less computed, in ticks. */
  readonly misfit: number;
  /** Number of readings behind it. */
  readonly weight: number;
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

function spread(n: number, parts: readonly (readonly [corner: number, by: Point])[]): number[] {
  const row = new Array<number>(unknownCount(n)).fill(0);
  for (const [corner, by] of parts) {
    for (const axis of [0, 1] as const) {
      const at = unknownAt(corner, axis);
      if (at >= 0) row[at]! += by[axis];
    }
  }
  return row;
}

/** Row of the distance between two corners. */
export function distanceRow(corners: readonly Point[], from: number, to: number): number[] {
  const [a, b] = [corners[from]!, corners[to]!];
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const [ux, uy] = [(b[0] - a[0]) / length, (b[1] - a[1]) / length];
  return spread(corners.length, [
    [from, [-ux, -uy]],
    [to, [ux, uy]],
  ]);
}

function observedRow(corners: readonly Point[], seen: Observation): DesignRow {
  const [a, b] = [corners[seen.from]!, corners[seen.to]!];
  return {
    coefficients: distanceRow(corners, seen.from, seen.to),
    misfit: seen.mean - Math.hypot(b[0] - a[0], b[1] - a[1]),
    weight: seen.read.length,
  };
}

/** A corner of 180 degrees lies on the line of its neighbours, as good as one reading. */
function straightRow(corners: readonly Point[], at: number): DesignRow {
  const n = corners.length;
  const [before, after] = [(at + n - 1) % n, (at + 1) % n];
  const [a, p, b] = [corners[before]!, corners[at]!, corners[after]!];
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const [ux, uy] = [(b[0] - a[0]) / length, (b[1] - a[1]) / length];
  const along = ((p[0] - a[0]) * ux + (p[1] - a[1]) * uy) / length;
  return {
    coefficients: spread(n, [
      [at, [-uy, ux]],
      [before, [uy * (1 - along), -ux * (1 - along)]],
      [after, [uy * along, -ux * along]],
    ]),
    misfit: (p[0] - a[0]) * uy - (p[1] - a[1]) * ux,
    weight: 1,
  };
}

/** All rows: one a reading, in their order, then one a straight corner. */
export function designRows(
  corners: readonly Point[],
  seen: readonly Observation[],
  straight: readonly number[],
): DesignRow[] {
  return [
    ...seen.map((one) => observedRow(corners, one)),
    ...straight.map((corner) => straightRow(corners, corner)),
  ];
}
