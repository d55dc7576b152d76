import type { Job } from '../../job/Job.ts';
import type { Ticks } from '../../measure/index.ts';
import { FLATNESS, flatnessClass, flatnessGap, type Limit, straightedgeAsNamed } from '../../trade/index.ts';
import { makeFlatness } from '../makeFlatness.ts';
import { limitOf, ON_SITE } from './limitOf.ts';

/** Each reading under a straightedge against the flatness that a tile asks for; without readings, what to check. */
export function flatnessLimits(job: Job, surface: string, longest: Ticks): readonly Limit[] {
  const { gap, over, shortGap, shortOver, name } = flatnessClass(longest, job.print.system);
  const rule = `flatness.${name}`;
  const onGrid = gridLimits(job, surface, longest, rule);
  if (job.base.flatness.length === 0 && onGrid.length > 0) return onGrid;
  if (job.base.flatness.length === 0)
    return [
      limitOf(FLATNESS, {
        rule,
        bound: 'most',
        surface,
        found: ON_SITE,
        limit: gap,
        unit: 'ticks',
        over,
        pass: true,
        wouldPass: { code: 'limit.flatness.check', figures: { gap, over, shortGap, shortOver } },
      }),
    ];
  const read = job.base.flatness.map((reading) => {
    const under = straightedgeAsNamed(reading.under, { over, shortOver });
    const most = flatnessGap(longest, under, job.print.system);
    const pass = reading.gap <= most;
    return limitOf(FLATNESS, {
      rule,
      bound: 'most',
      surface,
      found: reading.gap,
      limit: most,
      unit: 'ticks',
      over: under,
      pass,
      ...(reading.where === undefined ? {} : { at: [reading.where] }),
      ...(pass ? {} : { wouldPass: { code: 'limit.flatness.pass', figures: { gap: most, over: under } } }),
    });
  });
  return [...read, ...onGrid];
}

/** The worst spot of a grid of readings under each straightedge that spans them. */
function gridLimits(job: Job, surface: string, longest: Ticks, rule: string): readonly Limit[] {
  const { grid } = job.base;
  if (grid?.surface !== surface) return [];
  const { under } = makeFlatness(grid, { longest, areaM2: 0, system: job.print.system });
  return under.flatMap(({ straightedge, limit, pass, worst }): Limit[] => {
    if (!worst) return [];
    const spot = `${worst.row}/${worst.number}`;
    const figures = { gap: limit, over: straightedge, spot };
    return [
      limitOf(FLATNESS, {
        rule,
        bound: 'most',
        surface,
        found: worst.depth,
        limit,
        unit: 'ticks',
        over: straightedge,
        pass,
        at: [spot],
        ...(pass ? {} : { wouldPass: { code: `limit.flatness.${worst.kind}`, figures } }),
      }),
    ];
  });
}
