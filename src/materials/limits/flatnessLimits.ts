import type { Job } from '../../job/Job.ts';
import type { Ticks } from '../../measure/index.ts';
import { FLATNESS, flatnessClass, flatnessGap, type Limit } from '../../trade/index.ts';
import { limitOf, ON_SITE } from './limitOf.ts';

/** Each reading under a straightedge against the flatness that a tile asks for; without readings, what to check. */
export function flatnessLimits(job: Job, surface: string, longest: Ticks): readonly Limit[] {
  const { gap, over, shortGap, shortOver, name } = flatnessClass(longest);
  const rule = `flatness.${name}`;
  if (job.base.flatness.length === 0)
    return [
      limitOf(FLATNESS, {
        rule,
        surface,
        found: ON_SITE,
        limit: gap,
        unit: 'ticks',
        pass: true,
        wouldPass: { code: 'limit.flatness.check', figures: { gap, over, shortGap, shortOver } },
      }),
    ];
  return job.base.flatness.map((reading) => {
    const most = flatnessGap(longest, reading.under);
    const pass = reading.gap <= most;
    return limitOf(FLATNESS, {
      rule,
      surface,
      found: reading.gap,
      limit: most,
      unit: 'ticks',
      pass,
      ...(reading.where === undefined ? {} : { at: [reading.where] }),
      ...(pass
        ? {}
        : { wouldPass: { code: 'limit.flatness.pass', figures: { gap: most, over: reading.under } } }),
    });
  });
}
