import type { Precision } from '../job/Job.ts';
import type { LeastSquares } from './leastSquares.ts';
import { chiSquareLimit, tauLimit } from './quantiles.ts';
import { degreesOfFreedom, type Kept, squaresOf } from './slips.ts';

/** How contradicted a reading may be before it is suspect. */
export interface ReadingTest {
  readonly kind: 'w' | 'tau';
  readonly limit: number;
  /** What w is divided by: 1, or the standard deviation of unit weight that the readings show. */
  readonly unit: number;
}

/** One good reading in a thousand is suspected: the usual level, with a limit of 3.29 for w. Source: Baarda 1968. */
const rareReading = 0.001;
/** Of good rooms at most so many are suspected; rooms of many readings raise the limit for it (Bonferroni). */
const rareRoom = 0.02;

/**
 * Limit of w where so many slips are looked for in a room.
 *
 * @example
 * Math.round(100 * limitOfW(10)) //=> 329
 */
export function limitOfW(slips: number): number {
  return Math.sqrt(chiSquareLimit(1 - rareShare(slips), 1));
}

const rareShare = (slips: number) => Math.min(rareReading, rareRoom / Math.max(slips, 1));

/**
 * The test of single readings after a fit in which so many slips are looked for: w where their precision is known, tau where
 * only they themselves tell of it; null where too few readings are left for either.
 */
export function readingTest(
  { kind }: Precision,
  kept: readonly Kept[],
  solved: LeastSquares,
  slips: number,
): ReadingTest | null {
  const freedom = degreesOfFreedom(kept, solved);
  if (freedom < 1) return null;
  if (kind === 'stated') return { kind: 'w', limit: limitOfW(slips), unit: 1 };
  if (freedom < 2) return null;
  const unit = Math.sqrt(squaresOf(kept, solved) / freedom);
  return unit > 0 ? { kind: 'tau', limit: tauLimit(1 - rareShare(slips), freedom), unit } : null;
}
