import { describe, expect, test } from 'vitest';
import { freeCovariance } from '../../src/room/freeCovariance.ts';
import { leastSquares } from '../../src/room/leastSquares.ts';
import { type Observation, observations } from '../../src/room/observations.ts';
import { degreesOfFreedom, keptOf } from '../../src/room/slips.ts';
import { chance } from '../support/chance.ts';
import { oracle } from './support/oracle.ts';
import { crooked, ell, ellDiagonals, type Plan, quad, readRoom } from './support/simulate.ts';

const quadDiagonals = [
  [0, 2],
  [1, 3],
] as const;
const plans: Readonly<Record<string, Plan>> = {
  'four walls and a diagonal': { corners: quad, diagonals: [[0, 2]], times: 1 },
  'four walls and both diagonals, all twice': { corners: quad, diagonals: quadDiagonals, times: 2 },
  'an L with six diagonals': { corners: ell, diagonals: ellDiagonals, times: 1 },
  'an L with corner checks': { corners: ell, diagonals: [[0, 2]], times: 1, checks: [36, 48] },
  'four walls and a base line': { corners: quad, diagonals: [], times: 1, baseLine: true },
  'an L with everything': {
    corners: ell,
    diagonals: ellDiagonals,
    times: 3,
    checks: [24, 32],
    baseLine: true,
  },
};
const solve = (plan: Plan, seed: number) => {
  const by = chance(seed);
  const truth = crooked(plan.corners, by);
  const seen: Observation[] = observations(readRoom(truth, plan, 1016, by)).map((one, i) => {
    // Readings of different precision.
    return { ...one, sd: i % 3 === 0 ? 508 : 1016 };
  });
  return { seen, solved: leastSquares(truth, seen)! };
};

/** The judge is a general library for linear algebra that inverts the whole, singular system. */
describe.each(Object.entries(plans))('%s', (_, plan) => {
  const { seen, solved } = solve(plan, 11);
  const judged = oracle(seen, solved.corners, solved.line);

  test('leave nothing to gain in any coordinate', () => {
    for (const one of judged.gradient) expect(Math.abs(one)).toBeLessThan(1e-5);
  });

  test('have the redundancy numbers of the whole system, which sum to what is more than needed', () => {
    for (const [i, share] of judged.shares.entries()) expect(solved.redundancies[i]).toBeCloseTo(share, 5);
    const sum = solved.redundancies.reduce((total, one) => total + one, 0);
    const repeats = seen.reduce((total, { read }) => total + read.length - 1, 0);
    expect(sum + repeats).toBeCloseTo(degreesOfFreedom(keptOf(seen), solved), 6);
  });

  test('have the covariance of the least trace, that of inner constraints', () => {
    if (plan.baseLine) return expectTrace(freeCovariance(solved), judged.covariance);
    for (const [i, row] of freeCovariance(solved).entries())
      for (const [j, one] of row.entries())
        expect(Math.abs(one - judged.covariance[i]![j]!)).toBeLessThan(1e-4 * 1016 ** 2);
  });
});

/** With a line among the unknowns the least trace of all is another, and that of the corners alone is less. */
function expectTrace(free: readonly (readonly number[])[], other: readonly (readonly number[])[]): void {
  const trace = (q: readonly (readonly number[])[]) => free.reduce((sum, _, i) => sum + q[i]![i]!, 0);
  expect(trace(free)).toBeLessThanOrEqual(trace(other) * (1 + 1e-6));
  expect(trace(free)).toBeGreaterThan(trace(other) / 2);
}
