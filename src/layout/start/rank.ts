import type { Candidate } from '../Layout.ts';
import { groupNearly, sortNearly } from './sortNearly.ts';

/** Shares nearer than this to the best are as good: a tick or two of rounding must not decide. */
const SAME_SHARE = 0.0005;

/** Shifts nearer than this, in ticks, are one: they follow the room's corners, which rounding moves. */
export const SAME_SHIFT = 16;

type Ranked = Omit<Candidate, 'origin' | 'reason' | 'ends'>;

/**
 * Candidates, best first: the fewest pieces too thin to be sawn, the largest smallest piece in sight, then the smaller shift from balance, then openings that are easier
 * to cut, then fewer pieces and fewer cuts. What is still equal goes by what is less work, so that a mirrored room has the
 * mirrored choice.
 */
export function rank<T extends Ranked>(candidates: readonly T[]): T[] {
  const sawn = groupNearly(candidates, ({ slivers = 0 }) => -slivers, 0);
  const shares = sawn.flatMap((alike) =>
    groupNearly(alike, ({ smallestShare }) => smallestShare, SAME_SHARE),
  );
  return shares.flatMap((alike) => sortNearly(alike, ({ shift }) => -shift, SAME_SHIFT, byCount));
}

const COUNTS = ['webFaults', 'hardCuts', 'pieces', 'cut', 'underHalf', 'nearFull', 'cutLength'] as const;

function byCount(a: Ranked, b: Ranked): number {
  const differs = COUNTS.find((count) => a[count] !== b[count]);
  return differs ? a[differs] - b[differs] : 0;
}
