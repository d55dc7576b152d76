import type { Job } from '../../job/Job.ts';
import { COLD, HEAT_AFTER, type Limit, warmEnough } from '../../trade/index.ts';
import { limitOf, ON_SITE } from './limitOf.ts';

/** Room temperature while setting, and the wait of a heated floor. */
export function heatLimits(job: Job): readonly Limit[] {
  const pass = warmEnough(job.work.tempC);
  const cold = limitOf(COLD, {
    rule: 'temperature',
    bound: 'least',
    found: job.work.tempC,
    limit: COLD.value.stopC,
    unit: 'tempC',
    pass,
    ...(pass
      ? {}
      : { wouldPass: { code: 'limit.temperature.pass', figures: { leastTempC: COLD.value.stopC } } }),
  });
  const heat = limitOf(HEAT_AFTER, {
    rule: 'heat',
    bound: 'least',
    found: ON_SITE,
    limit: HEAT_AFTER.value.days,
    unit: 'days',
    pass: true,
  });
  return job.base.heated ? [cold, heat] : [cold];
}
