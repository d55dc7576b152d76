import type { Job } from '../job/Job.ts';
import {
  COLD,
  type Fact,
  GROUT_AFTER,
  SEAL_AFTER,
  temperatureFactor,
  WALK_AFTER,
  WATER_AFTER,
} from '../trade/index.ts';

/** A wait in hours as it is used, and where it comes from. */
export interface Wait {
  readonly hours: number;
  readonly source: string;
  /** The wait in a warm room, where the cold of this one, in °C, makes it longer. */
  readonly warmHours?: number;
  readonly tempC?: number;
}

export interface Waits {
  readonly grout: Wait;
  readonly walk: Wait;
  readonly heavy: Wait;
  readonly water: Wait;
  readonly sealFrom: Wait;
  readonly sealTo: Wait;
}

/**
 * Waits of a job. A time from a product's own sheet stands as it is; our default grows with the cold, to the next whole
 * hour.
 */
export function waitsOf({ products: { mortar, grout }, work }: Job): Waits {
  const factor = temperatureFactor(work.tempC);
  const wait = (stated: readonly string[], field: string, hours: number, fact: Fact<unknown>): Wait => {
    if (stated.includes(field)) return { hours, source: 'job' };
    if (factor <= 1) return { hours: Math.ceil(hours - 1e-6), source: fact.source };
    const cold = { warmHours: hours, tempC: work.tempC };
    return { hours: Math.ceil(hours * factor - 1e-6), source: COLD.source, ...cold };
  };
  return {
    grout: wait(mortar.stated, 'groutAfterHours', mortar.groutAfterHours, GROUT_AFTER),
    walk: wait(grout.stated, 'walkHours', grout.walkHours, WALK_AFTER),
    heavy: wait(grout.stated, 'heavyHours', grout.heavyHours, WALK_AFTER),
    water: wait(grout.stated, 'waterHours', grout.waterHours, WATER_AFTER),
    sealFrom: wait(grout.stated, 'sealAfterHours', grout.sealAfterHours[0], SEAL_AFTER),
    sealTo: onlyBeginning(grout)
      ? { hours: grout.sealAfterHours[1], source: 'twoDays' }
      : wait(grout.stated, 'sealAfterHours', grout.sealAfterHours[1], SEAL_AFTER),
  };
}

/** Whether the product's sheet says from when to seal and not until when. */
function onlyBeginning({ stated }: Job['products']['grout']): boolean {
  return stated.includes('sealAfterHours') && !stated.includes('sealToHours');
}
