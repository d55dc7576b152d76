import type { Job } from '../../job/Job.ts';
import {
  bayLimit,
  type Limit,
  MOVEMENT,
  movementBays,
  PERIMETER_GAP,
  perimeterGap,
} from '../../trade/index.ts';
import { fieldRuns } from '../fieldRuns.ts';
import type { Laid } from '../laidSurfaces.ts';
import { limitOf } from './limitOf.ts';

/** Movement joints: the longest runs of a field against the largest bay, and the gap at each of its edges. */
export function movementLimits(job: Job, laid: Laid): readonly Limit[] {
  return [...bayLimits(job, laid), ...gapLimits(job, laid)];
}

function bayLimits(job: Job, { spec, layout }: Laid): readonly Limit[] {
  const limit = bayLimit(spec.exposure, job.base.heated, job.print.system);
  const exposed = spec.exposure !== 'dry' || job.base.heated;
  return fieldRuns(layout).map((run, axis) => {
    const { bays, each } = movementBays(run, limit);
    const pass = bays === 1;
    return limitOf(MOVEMENT, {
      rule: `movement.${exposed ? 'exposed' : 'dry'}.${axis === 0 ? 'along' : 'across'}`,
      surface: spec.name,
      found: run,
      limit,
      unit: 'ticks',
      pass,
      ...(pass
        ? {}
        : {
            wouldPass: {
              code: 'limit.movement.pass',
              figures: { bayCount: bays, jointCount: bays - 1, each: Math.round(each) },
            },
          }),
    });
  });
}

/** The narrowest gap of the surface against the least; then, as advice, edges under the wanted gap. */
function gapLimits(job: Job, { spec, layout }: Laid): readonly Limit[] {
  const { wanted, least } = perimeterGap(job.print.system);
  const edges = [...layout.frame.edges, ...layout.frame.obstacles.flatMap(({ edges }) => edges)];
  if (edges.length === 0) return [];
  const narrowest = Math.min(...edges.map(({ gap }) => gap));
  const under = (limit: number) => edges.filter(({ gap }) => gap < limit).map(({ id }) => id);
  const row = (rule: string, limit: number) =>
    limitOf(PERIMETER_GAP, {
      rule,
      surface: spec.name,
      found: narrowest,
      limit,
      unit: 'ticks',
      pass: narrowest >= limit,
      ...(narrowest >= limit
        ? {}
        : { at: under(limit), wouldPass: { code: `limit.${rule}.pass`, figures: { gap: limit } } }),
    });
  const must = row('gap.least', least);
  return must.pass && narrowest < wanted ? [must, { ...row('gap.wanted', wanted), advice: true }] : [must];
}
