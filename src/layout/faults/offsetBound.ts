import type { Pattern } from '../../pattern/Pattern.ts';
import type { Ground } from '../frame/Ground.ts';
import type { Fault } from '../Layout.ts';
import { bestCourses } from '../start/bestCourses.ts';
import type { FacingRun } from '../start/findRuns.ts';
import { stretchOf } from '../start/stretchOf.ts';
import { leastCut } from './limits.ts';

/**
 * Running bond on a run where no start at all brings the end cuts of every course up to the least cut: then the largest
 * smallest cut that can be had, in ticks, so that nobody goes on looking.
 */
export function offsetBound(pattern: Pattern, run: FacingRun, { faces, minShare }: Ground): Fault[] {
  const best = bestCourses(run, pattern, faces, 0);
  const { size, joint } = stretchOf(run, pattern, 0);
  const limit = Math.round(leastCut(size, joint, minShare));
  if (!best || best.smallest >= limit) return [];
  return [{ code: 'offsetBound', pieces: [], figures: { size: best.smallest, limit } }];
}
