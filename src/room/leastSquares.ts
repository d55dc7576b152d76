import type { Point } from '../geometry/index.ts';
import { cholesky, type Factor, solveCholesky, solveLower } from './cholesky.ts';
import { type DesignRow, designRows, distanceRow, unknownAt, unknownCount } from './designRows.ts';
import type { Observation } from './observations.ts';

export interface LeastSquares {
  /** First corner at the origin, second on +x; not rounded. */
  readonly corners: readonly Point[];
  /** Adjusted less observed, one a reading. */
  readonly residuals: readonly number[];
  /** Share of each reading that the others check, 0 to 1; they sum to the redundancy. */
  readonly redundancies: readonly number[];
}

const mostSteps = 50;
/** A step shorter than this many ticks is the last. */
const smallStep = 1e-4;
/** A distance between two corners that is this many times less sure than a reading counts as not fixed. */
const weakest = 20;

const cost = (rows: readonly DesignRow[]) =>
  rows.reduce((sum, row) => sum + row.weight * row.misfit * row.misfit, 0);

function normalFactor(rows: readonly DesignRow[], n: number): Factor | undefined {
  const normal = Array.from({ length: n }, (_, i) => new Array<number>(i + 1).fill(0));
  for (const { coefficients, weight } of rows)
    for (let i = 0; i < n; i++) {
      const scaled = weight * coefficients[i]!;
      if (scaled !== 0) for (let j = 0; j <= i; j++) normal[i]![j]! += scaled * coefficients[j]!;
    }
  return cholesky(normal);
}

function gradient(rows: readonly DesignRow[], n: number): number[] {
  const right = new Array<number>(n).fill(0);
  for (const { coefficients, misfit, weight } of rows)
    for (let i = 0; i < n; i++) right[i]! += weight * misfit * coefficients[i]!;
  return right;
}

function moved(corners: readonly Point[], step: readonly number[], share: number): Point[] {
  const by = (corner: number, axis: 0 | 1) => share * (step[unknownAt(corner, axis)] ?? 0);
  return corners.map(([x, y], i): Point => [x + by(i, 0), y + by(i, 1)]);
}

/** Every distance between corners is fixed about as well as a reading, so that no part of the room can swing. */
function isFirm(corners: readonly Point[], factor: Factor): boolean {
  return corners.every((_, i) =>
    corners.slice(0, i).every((_, j) => squared(factor, distanceRow(corners, j, i)) < weakest * weakest),
  );
}

const squared = (factor: Factor, row: readonly number[]) =>
  solveLower(factor, row).reduce((sum, y) => sum + y * y, 0);

/**
 * Corners that fit the distances between them best: least squares weighted by the number of readings, by
 * Gauss and Newton's steps, halved where a whole one would lead away. `start` has its first corner at the origin and
 * the second on +x; `straight` numbers the corners that lie on the line of their neighbours.
 * Undefined where the readings do not fix the shape or the steps do not settle.
 *
 * Sources: Ghilani and Wolf, Adjustment Computations, ch. 14 (trilateration); redundancy numbers after Baarda 1968.
 */
export function leastSquares(
  start: readonly Point[],
  seen: readonly Observation[],
  straight: readonly number[] = [],
): LeastSquares | undefined {
  const n = unknownCount(start.length);
  let corners = start;
  for (let turn = 0; turn < mostSteps; turn++) {
    const rows = designRows(corners, seen, straight);
    const factor = normalFactor(rows, n);
    if (!factor) return undefined;
    const step = solveCholesky(factor, gradient(rows, n));
    if (Math.max(...step.map(Math.abs)) < smallStep) {
      if (!isFirm(corners, factor)) return undefined;
      return { corners, ...judge(rows.slice(0, seen.length), factor) };
    }
    let share = 1;
    while (share > 1e-3 && cost(designRows(moved(corners, step, share), seen, straight)) > cost(rows))
      share /= 2;
    corners = moved(corners, step, share);
  }
  return undefined;
}

function judge(rows: readonly DesignRow[], factor: Factor) {
  return {
    residuals: rows.map((row) => -row.misfit),
    redundancies: rows.map((row) => 1 - row.weight * squared(factor, row.coefficients)),
  };
}
