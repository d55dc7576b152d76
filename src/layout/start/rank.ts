import type { Candidate } from '../Layout.ts';

/** Shares nearer than this are the same: a tick or two of rounding must not decide. */
const SAME_SHARE = 0.0005;

/**
 * Candidates, best first: the largest smallest piece in sight, then fewer pieces, then the smaller shift
 * from balance, then less to saw.
 */
export function rank<T extends Candidate>(candidates: readonly T[]): T[] {
  return [...candidates].sort(
    (a, b) =>
      step(b.smallestShare) - step(a.smallestShare) ||
      a.pieces - b.pieces ||
      a.shift - b.shift ||
      a.cutLength - b.cutLength,
  );
}

function step(share: number): number {
  return Math.round(share / SAME_SHARE);
}
