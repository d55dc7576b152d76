import type { Job } from './Job.ts';

/**
 * Whether a toilet stands on one of the floors: on each flange does one, even where the job names none.
 *
 * @example hasToilet({ surfaces: [] }) //=> false
 */
export function hasToilet({ surfaces }: Pick<Job, 'surfaces'>): boolean {
  return surfaces.some(({ obstacles }) => obstacles.some(({ meets }) => meets === 'flange'));
}
