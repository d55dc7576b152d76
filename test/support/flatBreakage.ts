import type { Job } from '../../src/job/Job.ts';

/** The same share of all cuts, however they are sawn. */
export function flatBreakage(share: number): Job['waste']['breakage'] {
  return { straight: share, point: share, notch: share, u: share, hole: share, curve: share, odd: share };
}
