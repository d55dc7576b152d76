import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bestDirection, type Weighed, worstTaper } from '../../../src/layout/taper/bestDirection.ts';

const wall = fc.record({
  off: fc.double({ min: -0.17, max: 0.17, noNaN: true }),
  weight: fc.double({ min: 0, max: 1e6, noNaN: true }),
});

/** The largest taper of the best of many turns tried one after the other. */
function leastTried(walls: readonly Weighed[]): number {
  const turns = Array.from({ length: 4001 }, (_, i) => -0.2 + i * 1e-4);
  return Math.min(...turns.map((turn) => worstTaper(walls, turn)));
}

describe('the direction that shares the taper', () => {
  test('is never worse than the best of many that were tried', () => {
    fc.assert(
      fc.property(fc.array(wall, { minLength: 1, maxLength: 8 }), (walls) => {
        expect(worstTaper(walls, bestDirection(walls))).toBeLessThanOrEqual(leastTried(walls) + 1e-6);
      }),
      { seed: 48, numRuns: 200 },
    );
  });

  test('of two walls of one length lies half way between them', () => {
    const walls = [
      { off: 0, weight: 100 },
      { off: 0.02, weight: 100 },
    ];
    expect(bestDirection(walls)).toBeCloseTo(0.01, 6);
  });

  test('is that of the only wall that anyone sees', () => {
    const walls = [
      { off: 0.02, weight: 0 },
      { off: 0.01, weight: 80 },
    ];
    expect(bestDirection(walls)).toBe(0.01);
  });

  test('stays where it is when nobody sees any wall', () => {
    expect(bestDirection([{ off: 0.05, weight: 0 }])).toBe(0);
  });
});
