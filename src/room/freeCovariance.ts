import type { Point } from '../geometry/index.ts';
import { solveCholesky } from './cholesky.ts';
import { distanceParts, unknownAt } from './designRows.ts';
import type { LeastSquares } from './leastSquares.ts';

/** Covariance of all coordinates, x and y of each corner in turn, in square ticks. */
export type Covariance = readonly (readonly number[])[];

/** Columns that move all corners alike: along x, along y, and round their middle. */
function motions(corners: readonly Point[]): number[][] {
  const n = corners.length;
  const [mx, my] = [0, 1].map((axis) => corners.reduce((sum, p) => sum + p[axis]!, 0) / n) as [
    number,
    number,
  ];
  return [
    corners.flatMap(() => [1, 0]),
    corners.flatMap(() => [0, 1]),
    corners.flatMap(([x, y]) => [my - y, x - mx]),
  ];
}

const dot = (a: readonly number[], b: readonly number[]) => a.reduce((sum, x, i) => sum + x * b[i]!, 0);

/** A vector less its parts along the motions. */
function freed(vector: readonly number[], columns: readonly (readonly number[])[]): number[] {
  return columns.reduce<readonly number[]>((rest, column) => {
    const share = dot(column, rest) / dot(column, column);
    return rest.map((x, i) => x - share * column[i]!);
  }, vector) as number[];
}

const transposed = (matrix: Covariance) => matrix[0]!.map((_, j) => matrix.map((row) => row[j]!));

/** Covariance where the first corner and the direction of the first wall are held fast. */
function heldCovariance({ corners, factor }: LeastSquares): Covariance {
  const unknowns = corners.flatMap((_, i) => [unknownAt(i, 0), unknownAt(i, 1)]);
  return unknowns.map((at) => {
    if (at < 0) return unknowns.map(() => 0);
    const unit = factor.map((_, i) => (i === at ? 1 : 0));
    const column = solveCholesky(factor, unit);
    return unknowns.map((other) => (other < 0 ? 0 : column[other]!));
  });
}

/**
 * Covariance of the corners with nothing held fast: that of inner constraints, whose trace is the least of all.
 *
 * Source: Baarda's S-transformation, S-transformations and criterion matrices, 1973.
 */
export function freeCovariance(solved: LeastSquares): Covariance {
  const columns = motions(solved.corners);
  const once = heldCovariance(solved).map((row) => freed(row, columns));
  return transposed(transposed(once).map((row) => freed(row, columns)));
}

/** Root mean square over the corners of how far each may be out. */
export function meanSd(covariance: Covariance): number {
  const trace = covariance.reduce((sum, row, i) => sum + row[i]!, 0);
  return Math.sqrt((2 * trace) / covariance.length);
}

/**
 * The trace that is left when the distance between two corners is read once more with a standard deviation, by an update of
 * rank one.
 */
export function traceWith(
  covariance: Covariance,
  corners: readonly Point[],
  [from, to]: readonly [number, number],
  sd: number,
): number {
  const row = new Array<number>(2 * corners.length).fill(0);
  for (const [corner, by] of distanceParts(corners, from, to)) row.splice(2 * corner, 2, by[0], by[1]);
  const gain = covariance.map((line) => dot(line, row));
  const trace = covariance.reduce((sum, line, i) => sum + line[i]!, 0);
  return trace - dot(gain, gain) / (sd ** 2 + dot(row, gain));
}
