import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cholesky, solveCholesky } from '../../src/room/cholesky.ts';

const lowerOf = (matrix: readonly (readonly number[])[]) => matrix.map((row, i) => row.slice(0, i + 1));

describe('the Cholesky factor', () => {
  it('of a matrix published with its factor is that factor', () => {
    // A matrix often printed as the example of the method: 4 12 −16; 12 37 −43; −16 −43 98 (from memory).
    expect(cholesky([[4], [12, 37], [-16, -43, 98]])).toEqual([[2], [6, 1], [-8, 5, 3]]);
  });

  it('does not exist where the matrix leaves something free', () => {
    expect(cholesky([[1], [1, 1]])).toBeUndefined();
    expect(cholesky([[1], [2, 1]])).toBeUndefined();
  });

  it('solves N·x = b: put back, x gives b', () => {
    const number = fc.integer({ min: -9, max: 9 });
    const square = fc.array(fc.array(number, { minLength: 4, maxLength: 4 }), { minLength: 4, maxLength: 4 });
    fc.assert(
      fc.property(square, fc.array(number, { minLength: 4, maxLength: 4 }), (a, b) => {
        const times = (p: readonly number[], q: readonly number[]) =>
          p.reduce((sum, x, k) => sum + x * q[k]!, 0);
        const normal = a.map((row, i) => a.map((other, j) => times(row, other) + (i === j ? 1 : 0)));
        const x = solveCholesky(cholesky(lowerOf(normal))!, b);
        for (const [i, row] of normal.entries()) expect(times(row, x)).toBeCloseTo(b[i]!, 6);
      }),
      { seed: 1, numRuns: 100 },
    );
  });
});
