import type { BaseSpec, HeightSpec, Job, Layer } from '../job/Job.ts';
import { onGrid, type System, type Ticks } from '../measure/index.ts';
import { undercut } from '../trade/index.ts';
import type { Heights } from './Heights.ts';
import { heightResult } from './heightResult.ts';
import { thicknessOf, topOf } from './layerTops.ts';
import { toMeasure } from './toMeasure.ts';

/**
 * Heights over the bare base once the floor is tiled, in ticks, and what follows for each thing that was measured. The
 * undercut is taken over the floor that the new layers lie on, when what is removed is gone. All of it is reckoned from sizes as they
 * are printed, so that what a reader adds up on paper is what stands there; a job printed in its own units loses nothing by it.
 */
export function makeHeights(job: Job): Heights {
  const base = asPrinted(job.base, job.print.system);
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
      heightResult({
        spec,
        after: spec.height + topOf(base, spec.above) - stack,
        fresh,
        system: job.print.system,
        onFall: standsOnFall(job, spec),
      }),
    ),
    toMeasure: toMeasure(job),
  };
}

/** Whether a height is that of a flange in a floor that falls. */
function standsOnFall({ surfaces }: Job, { kind }: HeightSpec): boolean {
  if (kind !== 'flange') return false;
  const withFlange = surfaces.filter(({ obstacles }) => obstacles.some(({ meets }) => meets === 'flange'));
  return withFlange.some(({ falls }) => falls !== undefined);
}

/** Layers and measured heights on the grid on which lengths are printed. */
function asPrinted(base: BaseSpec, system: System): BaseSpec {
  const printed = (ticks: Ticks) => onGrid(ticks, system, {});
  const layers = (all: readonly Layer[]) =>
    all.map((layer) => ({ ...layer, thickness: printed(layer.thickness) }));
  return {
    ...base,
    removed: layers(base.removed),
    kept: layers(base.kept),
    fresh: layers(base.fresh),
    heights: base.heights.map(({ wanted, ...spec }) => ({
      ...spec,
      height: printed(spec.height),
      ...(wanted === undefined ? {} : { wanted: printed(wanted) }),
    })),
  };
}
