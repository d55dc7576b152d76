import type { Job } from '../../../src/job/Job.ts';
import type { Rules } from './judgePlan.ts';

/** What plans for a job's only tile, or for the one named, must keep to. */
export function rulesOf({ saw, offcuts, print, tiles }: Job, tile = tiles[0]!.key): Rules {
  const { turns } = tiles.find(({ key }) => key === tile)!;
  return { kerf: saw.kerf, narrowest: offcuts.narrowest, step: print.step, turns };
}
