import type { Job } from '../job/Job.ts';
import { onGrid, type Ticks } from '../measure/index.ts';
import { bedDepth, TROWEL_ANGLE } from '../trade/index.ts';
import { statedBed } from './statedBed.ts';

/** The bed of the heights, where it is printed as another one than the notch leaves. */
export function otherBed(job: Job): Ticks | undefined {
  const stated = statedBed(job);
  const printed = (ticks: number) => onGrid(ticks, job.print.system, {});
  return stated === undefined || printed(stated) === printed(left(job)) ? undefined : stated;
}

/** The bed that the job sheet orders, where the heights count with a deeper one than the trowel leaves as it is usually held. */
export function orderedBed(job: Job): Ticks | undefined {
  const stated = otherBed(job);
  return stated !== undefined && stated > left(job) ? stated : undefined;
}

function left({ products }: Job): number {
  return bedDepth(products.mortar.notch, TROWEL_ANGLE.value);
}
