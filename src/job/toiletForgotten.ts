import { hasToilet } from './hasToilet.ts';
import type { Job } from './Job.ts';

/** What a toilet is called where the job names it among what comes out. */
const TOILET = /\b(?:toilet|wc|closet|inodoro)\b/i;

/** Whether a toilet has to come out that the job does not name: it stands on a flange of the job. */
export function toiletForgotten(job: Pick<Job, 'surfaces' | 'base'>): boolean {
  return hasToilet(job) && !job.base.comesOut.some(({ what }) => TOILET.test(what));
}
