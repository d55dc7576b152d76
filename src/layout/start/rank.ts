import type { Candidate } from '../Layout.ts';

/** Shares nearer than this to the best are as good: a tick or two of rounding must not decide. */
const SAME_SHARE = 0.0005;

/**
 * Candidates, best first: the largest smallest piece in sight, then fewer pieces, then the smaller shift
 * from balance, then less to saw.
 */
export function rank<T extends Pick<Candidate, 'smallestShare' | 'pieces' | 'shift' | 'cutLength'>>(
  candidates: readonly T[],
): T[] {
  const left = [...candidates].sort((a, b) => b.smallestShare - a.smallestShare);
  const order: T[] = [];
  while (left.length > 0) {
    const best = left[0]!.smallestShare;
    const after = left.findIndex(({ smallestShare }) => smallestShare < best - SAME_SHARE);
    const alike = left.splice(0, after < 0 ? left.length : after);
    order.push(
      ...alike.sort((a, b) => a.pieces - b.pieces || a.shift - b.shift || a.cutLength - b.cutLength),
    );
  }
  return order;
}
