import type { Job } from '../job/Job.ts';
import { longestSide } from '../job/longestSide.ts';
import { type FlatnessReading, flatnessGap } from '../trade/index.ts';
import { makeFlatness } from './makeFlatness.ts';

/** What of a job says whether its base is filled. */
export type Filled = Pick<Job, 'base' | 'tiles' | 'joint' | 'print'>;

/**
 * Whether patch or leveler goes on the base: it follows an old floor that comes up, and what was found on the base. The calendar has
 * a wait for it and the tally a line where this says so, and nowhere else.
 */
export function isFilled(job: Filled): boolean {
  const { removed, hollow = [], nailHoles, fillBagLitres } = job.base;
  const asked = removed.length > 0 || hollow.length > 0 || nailHoles !== undefined;
  return asked || fillBagLitres !== undefined || isHollow(job) || tooHollow(job).length > 0;
}

/** Readings under a straightedge with a larger gap than the longest tile of the job allows. */
export function tooHollow({ base, tiles, joint, print }: Filled): readonly FlatnessReading[] {
  const longest = longestSide(tiles, joint);
  return base.flatness.filter(({ gap, under }) => gap > flatnessGap(longest, under, print.system));
}

/** Whether the readings on a grid have a hollow. */
function isHollow({ base: { grid }, print: { system } }: Filled): boolean {
  return grid !== undefined && makeFlatness(grid, { longest: 0, areaM2: 1, system }).patchLitres > 0;
}
