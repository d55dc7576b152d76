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
  const wait = (stated: readonly string[], field: string, hours: number, fact: Fact<unknown>): Wait =>
    stated.includes(field)
      ? { hours, source: 'job' }
      : {
          hours: Math.ceil(hours * factor - 1e-6),
          source: factor > 1 ? COLD.source : fact.source,
        };
  return {
    grout: wait(mortar.stated, 'groutAfterHours', mortar.groutAfterHours, GROUT_AFTER),
    walk: wait(grout.stated, 'walkHours', grout.walkHours, WALK_AFTER),
    heavy: wait(grout.stated, 'heavyHours', grout.heavyHours, WALK_AFTER),
    water: wait(grout.stated, 'waterHours', grout.waterHours, WATER_AFTER),
    sealFrom: wait(grout.stated, 'sealAfterHours', grout.sealAfterHours[0], SEAL_AFTER),
    sealTo: wait(grout.stated, 'sealAfterHours', grout.sealAfterHours[1], SEAL_AFTER),
  };
}
