import type { Precision } from '../job/Job.ts';
import type { LeastSquares } from './leastSquares.ts';
import { tauLimit } from './quantiles.ts';
import { degreesOfFreedom, type Kept, squaresOf } from './slips.ts';

/** How contradicted a reading may be before it is suspect. */
export interface ReadingTest {
  readonly kind: 'w' | 'tau';
  readonly limit: number;
  /** What w is divided by: 1, or the standard deviation of unit weight that the readings show. */
  readonly unit: number;
}

/** One good reading in a thousand is suspected: Baarda's usual limit. */
const rare = 0.001;
export const limitOfW = 3.29;

/**
 * The test of single readings after a fit: w where their precision is known, tau where only they themselves tell of it;
 * null where too few readings are left for either.
 */
export function readingTest(
  { kind }: Precision,
  kept: readonly Kept[],
  solved: LeastSquares,
): ReadingTest | null {
  const freedom = degreesOfFreedom(kept, solved);
  if (freedom < 1) return null;
  if (kind === 'stated') return { kind: 'w', limit: limitOfW, unit: 1 };
  if (freedom < 2) return null;
  const unit = Math.sqrt(squaresOf(kept, solved) / freedom);
  return unit > 0 ? { kind: 'tau', limit: tauLimit(1 - rare, freedom), unit } : null;
}
