import type { Candidate } from '../Layout.ts';
import { sortNearly } from './sortNearly.ts';

/** Shares nearer than this to the best are as good: a tick or two of rounding must not decide. */
const SAME_SHARE = 0.0005;

type Ranked = Omit<Candidate, 'origin' | 'reason' | 'ends'>;

/**
 * Candidates, best first: the largest smallest piece in sight, then fewer pieces, then the smaller shift
 * from balance. What is still equal goes by what is easier to cut, so that a mirrored room has the mirrored
 * choice.
 */
export function rank<T extends Ranked>(candidates: readonly T[]): T[] {
  return sortNearly(candidates, ({ smallestShare }) => smallestShare, SAME_SHARE, byCount);
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
