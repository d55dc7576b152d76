import type { Job } from '../../job/Job.ts';
import { onGrid, type Ticks } from '../../measure/index.ts';
import { BED_DEPTH, bedDepth, type Limit, TROWEL_ANGLE } from '../../trade/index.ts';
import { statedBed } from '../statedBed.ts';
import { limitOf } from './limitOf.ts';

/**
 * The bed that the heights count with against the one that the job's trowel leaves, where the job states both. What a trowel
 * leaves is the most that a tile can lie on once it is beaten in: it is held steeper, or has deeper notches.
 */
export function bedLimits(job: Job): readonly Limit[] {
  const stated = statedBed(job);
  if (stated === undefined) return [];
  const { notch } = job.products.mortar;
  const printed = (ticks: Ticks) => onGrid(ticks, job.print.system, {});
  const bed = Math.round(bedDepth(notch, TROWEL_ANGLE.value));
  const most = Math.round(bedDepth(notch));
  const pass = printed(bed) >= printed(stated);
  const way = printed(most) >= printed(stated) ? 'steeper' : 'deeper';
  return [
    limitOf(BED_DEPTH, {
      rule: 'bed',
      bound: 'least',
      found: bed,
      limit: stated,
      unit: 'ticks',
      pass,
      advice: true,
      ...(pass ? {} : { wouldPass: { code: `limit.bed.${way}`, figures: { bed, most, stated } } }),
    }),
  ];
}
