import type { Job } from '../job/Job.ts';
import { bagCoverage, batchMass, MORTAR_WASTE } from '../trade/index.ts';
import type { Zone } from './Zone.ts';

/**
 * Mortar powder for an area and the batches in which it is mixed, so that each is used up within its pot life.
 *
 * The bag's lowest coverage where the product gives it, else our table for the notch; less where tiles are back-buttered.
 *
 * @param areaM2 tile to set, in square metres.
 */
export function zoneMortar(
  job: Pick<Job, 'products' | 'work'>,
  areaM2: number,
): Pick<Zone, 'mortarKg' | 'batches'> {
  const { bagKg, coversM2, notch, backButter, potLifeHours } = job.products.mortar;
  const covers =
    (coversM2?.[0] ?? bagCoverage(notch, bagKg)) * (backButter ? MORTAR_WASTE.value.backButter : 1);
  const kgPerM2 = bagKg / covers;
  const mortarKg = areaM2 * kgPerM2;
  const batch = batchMass(job.work.paceM2PerHour, potLifeHours, kgPerM2);
  return { mortarKg, batches: Math.max(1, Math.ceil(mortarKg / batch - 1e-9)) };
}
