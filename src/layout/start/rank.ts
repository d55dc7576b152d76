import type { Candidate } from '../Layout.ts';

/** Shares nearer than this to the best are as good: a tick or two of rounding must not decide. */
const SAME_SHARE = 0.0005;

type Ranked = Omit<Candidate, 'origin' | 'reason' | 'ends'>;

/**
 * Candidates, best first: the largest smallest piece in sight, then fewer pieces, then the smaller shift
 * from balance. What is still equal goes by what is easier to cut, so that a mirrored room has the mirrored
 * choice.
 */
export function rank<T extends Ranked>(candidates: readonly T[]): T[] {
  const left = [...candidates].sort((a, b) => b.smallestShare - a.smallestShare);
  const order: T[] = [];
  while (left.length > 0) {
    const best = left[0]!.smallestShare;
    const after = left.findIndex(({ smallestShare }) => smallestShare < best - SAME_SHARE);
    order.push(...left.splice(0, after < 0 ? left.length : after).sort(byCount));
  }
  return order;
}

const COUNTS = [
  'pieces',
  'shift',
  'hardCuts',
  'underHalf',
  'nearFull',
  'webFaults',
  'cut',
  'cutLength',
] as const;

function byCount(a: Ranked, b: Ranked): number {
  const differs = COUNTS.find((count) => a[count] !== b[count]);
  return differs ? a[differs] - b[differs] : 0;
}
