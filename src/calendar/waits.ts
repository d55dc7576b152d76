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
  const wait = (stated: readonly string[], field: string, hours: number, fact: Fact<unknown>): Wait =>
    stated.includes(field) ? { hours, source: 'job' } : coldWait(hours, fact.source, work.tempC);
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

/**
 * A wait that no product's sheet gives, at a room temperature in °C: longer in the cold, to the next whole hour.
 *
 * @example
 * coldWait(24, 'practice', 21) //=> { hours: 24, source: 'practice' }
 */
export function coldWait(warmHours: number, source: string, tempC: number): Wait {
  const factor = temperatureFactor(tempC);
  const hours = Math.ceil(warmHours * Math.max(1, factor) - 1e-6);
  return factor <= 1 ? { hours, source } : { hours, source: COLD.source, warmHours, tempC };
}

/** Whether the product's sheet says from when to seal and not until when. */
function onlyBeginning({ stated }: Job['products']['grout']): boolean {
  return stated.includes('sealAfterHours') && !stated.includes('sealToHours');
}
