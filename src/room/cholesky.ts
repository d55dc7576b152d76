/** Lower triangle of a factor, row by row: row i holds i + 1 numbers. */
export type Factor = readonly (readonly number[])[];

/** A pivot smaller than this share of its diagonal is taken for zero. */
const smallestPivot = 1e-9;

/**
 * Cholesky factor L of a symmetric matrix N = L·Lᵀ, of which the lower triangle is read; undefined where the
 * matrix is not positive definite, that is where the readings leave something free.
 *
 * Source: Golub and Van Loan, Matrix Computations, section 4.2 (from memory).
 *
 * @example
 * cholesky([[4], [2, 5]]) //=> [[2], [1, 2]]
 */
export function cholesky(lower: Factor): Factor | undefined {
  const factor: number[][] = [];
  for (const [i, row] of lower.entries()) {
    const made: number[] = [];
    for (let j = 0; j <= i; j++) {
      const above = j === i ? made : factor[j]!;
      let rest = row[j]!;
      for (let k = 0; k < j; k++) rest -= made[k]! * above[k]!;
      if (j < i) made.push(rest / above[j]!);
      else if (rest > smallestPivot * row[i]!) made.push(Math.sqrt(rest));
      else return undefined;
    }
    factor.push(made);
  }
  return factor;
}

/**
 * Solves L·y = b. The square of y's length is bᵀ·N⁻¹·b, so it serves for variances, too.
 *
 * @example
 * solveLower([[2], [1, 2]], [2, 5]) //=> [1, 2]
 */
export function solveLower(factor: Factor, right: readonly number[]): number[] {
  const y: number[] = [];
  for (const [i, row] of factor.entries()) {
    let rest = right[i]!;
    for (let k = 0; k < i; k++) rest -= row[k]! * y[k]!;
    y.push(rest / row[i]!);
  }
  return y;
}

/**
 * Solves N·x = b by the factor of N.
 *
 * @example
 * solveCholesky([[2], [1, 2]], [8, 14]) //=> [0.75, 2.5]
 */
export function solveCholesky(factor: Factor, right: readonly number[]): number[] {
  const x = solveLower(factor, right);
  for (let i = x.length - 1; i >= 0; i--) {
    for (let k = i + 1; k < x.length; k++) x[i]! -= factor[k]![i]! * x[k]!;
    x[i]! /= factor[i]![i]!;
  }
  return x;
}
