import type { Job } from '../../job/Job.ts';
import { readOnOld } from '../../job/readOnOld.ts';
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
    const limit = limitOf(FLATNESS, {
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
    return asRead(job, limit);
  });
  return [...read, ...onGrid];
}

/**
 * A reading on a floor that comes up: what passes there stays open, as it says nothing of the base under it; what fails still fails,
 * and is read again too.
 */
function asRead(job: Job, limit: Limit): Limit {
  const readOn = readOnOld(job.base);
  if (readOn === undefined) return limit;
  if (!limit.pass) return { ...limit, readOn };
  const { found: gap, over = 0 } = limit;
  return {
    ...limit,
    found: ON_SITE,
    readOn,
    wouldPass: { code: 'limit.flatness.again', figures: { layers: readOn, gap, over } },
  };
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
    const held = limitOf(FLATNESS, {
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
    });
    return [asRead(job, held)];
  });
}
