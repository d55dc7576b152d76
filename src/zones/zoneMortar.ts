import type { Job } from '../job/Job.ts';
import { orderedBed } from '../materials/orderedBed.ts';
import { batchMass, mortarRate } from '../trade/index.ts';
import type { Zone } from './Zone.ts';

/**
 * Mortar powder for a zone by the rate of the tally, with nothing bought beyond it, and the batches in which it is mixed, so that each
 * is used up within its pot life.
 *
 * @param areaM2 the zone's part of the field, joints and all, in square metres.
 */
export function zoneMortar(job: Job, areaM2: number): Pick<Zone, 'mortarKg' | 'mortarBy' | 'batches'> {
  const { mortar } = job.products;
  const bed = orderedBed(job);
  const { kgPerM2, rules } = mortarRate(bed === undefined ? mortar : { ...mortar, bed });
  const mortarKg = areaM2 * kgPerM2;
  const batch = batchMass(job.work.paceM2PerHour, mortar.potLifeHours, kgPerM2);
  return { mortarKg, mortarBy: rules, batches: Math.max(1, Math.ceil(mortarKg / batch - 1e-9)) };
}
