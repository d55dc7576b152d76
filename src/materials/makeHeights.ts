import type { Job } from '../job/Job.ts';
import { undercut } from '../trade/index.ts';
import type { Heights } from './Heights.ts';
import { heightResult } from './heightResult.ts';
import { thicknessOf, topOf } from './layerTops.ts';
import { toMeasure } from './toMeasure.ts';

/**
 * Heights over the bare base once the floor is tiled, in ticks, and what follows for each thing that was measured. The
 * undercut is taken over the floor that the new layers lie on, when what is removed is gone.
 */
export function makeHeights(job: Job): Heights {
  const { base } = job;
  const fresh = thicknessOf(base.fresh);
  const stack = thicknessOf(base.kept) + fresh;
  return {
    stack,
    removed: thicknessOf(base.removed),
    undercut: undercut(
      base.fresh.map(({ thickness }) => thickness),
      job.print.system,
    ),
    results: base.heights.map((spec) =>
      heightResult(spec, spec.height + topOf(base, spec.above) - stack, fresh, job.print.system),
    ),
    toMeasure: toMeasure(job),
  };
}
