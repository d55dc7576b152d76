import type { LeastSquares } from './leastSquares.ts';
import type { Observation } from './observations.ts';
import { unchecked } from './slips.ts';

/** Where and by how much the readings contradict each other, in ticks. */
export interface Misclosure {
  /** A reading, or the corner where the walk ends. */
  readonly at: string;
  readonly by: number;
}

function suspect({ id, read, sd }: Observation, residual: number, share: number) {
  const checked = Math.max(share, 0) < unchecked ? 1 : share;
  return {
    at: id,
    by: Math.abs(residual) / checked,
    test: (Math.abs(residual) / sd) * Math.sqrt(read.length / checked),
  };
}

/**
 * The reading that the others contradict most, and by how much it would be out if it alone were wrong: its correction
 * divided by its redundancy number. The most contradicted one is that of the largest normalised residual. One reading too many makes
 * every reading equally suspect. Of equals the one that need be out least is told, as the end wall of a long hall would have to be feet
 * out for what half an inch of a diagonal explains; where even that is more than `gross`, the one that would be out most.
 *
 * Source: Baarda, A testing procedure for use in geodetic networks, 1968.
 */
export function worstReading(solved: LeastSquares, seen: readonly Observation[], gross: number): Misclosure {
  const suspects = seen.map((one, i) => suspect(one, solved.residuals[i]!, solved.redundancies[i]!));
  const most = Math.max(...suspects.map(({ test }) => test));
  // Of those that would be out alike the first is told.
  const equals = suspects.filter(({ test }) => test >= 0.999 * most);
  const least = equals.reduce((a, b) => (b.by < 0.999 * a.by ? b : a));
  return least.by > gross ? equals.reduce((a, b) => (b.by > 1.001 * a.by ? b : a)) : least;
}
