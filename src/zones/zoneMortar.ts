import type { Job } from '../job/Job.ts';
import { batchMass, mortarRate } from '../trade/index.ts';
import type { Zone } from './Zone.ts';

/**
 * Mortar powder for a zone by the rate of the tally, with nothing bought beyond it, and the batches in which it is mixed, so that each
 * is used up within its pot life. The pace counts tile, the bed lies under the joints too.
 *
 * @param tileM2 tile to set, in square metres.
 * @param fieldM2 the zone's part of the field, joints and all, in square metres.
 */
export function zoneMortar(
  job: Pick<Job, 'products' | 'work'>,
  tileM2: number,
  fieldM2: number,
): Pick<Zone, 'mortarKg' | 'mortarBy' | 'batches'> {
  const { mortar } = job.products;
  const { kgPerM2, rules } = mortarRate(mortar);
  const mortarKg = fieldM2 * kgPerM2;
  const batch = batchMass(job.work.paceM2PerHour, mortar.potLifeHours, mortarKg / tileM2);
  return { mortarKg, mortarBy: rules, batches: Math.max(1, Math.ceil(mortarKg / batch - 1e-9)) };
}
