import type { Point } from '../geometry/index.ts';
import { fitBaseLine } from './baseLine.ts';
import { cholesky, type Factor, solveCholesky, solveLower } from './cholesky.ts';
import {
  allUnknowns,
  type DesignRow,
  designRows,
  distanceRow,
  lever,
  type Placed,
  type Straight,
  unknownAt,
} from './designRows.ts';
import { type Observation, readingSd } from './observations.ts';

export interface LeastSquares extends Placed {
  /** First corner at the origin, second on +x; not rounded. */
  readonly corners: readonly Point[];
  /** Adjusted less mean of what was read, one an observation. */
  readonly residuals: readonly number[];
  /** Share of each mean that the others check, 0 to 1; they sum to the redundancy. */
  readonly redundancies: readonly number[];
  /** Factor of the normal matrix: its inverse is the covariance of the unknowns in square ticks. */
  readonly factor: Factor;
  /** Rows of the design matrix, one an observation, then those of straight corners. */
  readonly rows: readonly DesignRow[];
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

function moved({ corners, line }: Placed, step: readonly number[], share: number): Placed {
  const by = (corner: number, axis: 0 | 1) => share * (step[unknownAt(corner, axis)] ?? 0);
  const placed = corners.map(([x, y], i): Point => [x + by(i, 0), y + by(i, 1)]);
  if (!line) return { corners: placed };
  const [dx, dy, turn] = step.slice(-3).map((one) => share * one) as [number, number, number];
  const origin: Point = [line.origin[0] + dx, line.origin[1] + dy];
  return { corners: placed, line: { ...line, origin, turn: line.turn + turn / lever } };
}

/** Every distance between corners is fixed about as well as a reading, so that no part of the room can swing. */
function isFirm(placed: Placed, factor: Factor, sd: number): boolean {
  return placed.corners.every((_, i) =>
    placed.corners
      .slice(0, i)
      .every((_, j) => variance(factor, distanceRow(placed, j, i)) < (weakest * sd) ** 2),
  );
}

/** Variance of what a row tells of. */
export const variance = (factor: Factor, row: readonly number[]) =>
  solveLower(factor, row).reduce((sum, y) => sum + y * y, 0);

/**
 * Corners that fit best to what was read: least squares weighted by the number of readings and their standard
 * deviations, by Gauss and Newton's steps, halved where a whole one would lead away. `start` has its first corner at the
 * origin and the second on +x; `straight` numbers the corners that lie on the line of their neighbours.
 * Undefined where the readings do not fix the shape or the steps do not settle.
 *
 * Sources: Ghilani and Wolf, Adjustment Computations, ch. 14 (trilateration); redundancy numbers after Baarda 1968.
 */
export function leastSquares(
  start: readonly Point[],
  seen: readonly Observation[],
  straight: Straight = { corners: [], sd: readingSd },
): LeastSquares | undefined {
  const line = fitBaseLine(start, seen);
  let placed: Placed = line ? { corners: start, line } : { corners: start };
  const n = allUnknowns(placed);
  for (let turn = 0; turn < mostSteps; turn++) {
    const rows = designRows(placed, seen, straight);
    const factor = normalFactor(rows, n);
    if (!factor) return undefined;
    const step = solveCholesky(factor, gradient(rows, n));
    if (Math.max(...step.map(Math.abs)) < smallStep) {
      if (!isFirm(placed, factor, straight.sd)) return undefined;
      return { ...placed, ...judge(rows.slice(0, seen.length), factor), factor, rows };
    }
    let share = 1;
    while (share > 1e-3 && cost(designRows(moved(placed, step, share), seen, straight)) > cost(rows))
      share /= 2;
    placed = moved(placed, step, share);
  }
  return undefined;
}

function judge(rows: readonly DesignRow[], factor: Factor) {
  return {
    residuals: rows.map((row) => -row.misfit),
    redundancies: rows.map((row) => 1 - row.weight * variance(factor, row.coefficients)),
  };
}
