import type { CalendarEntry } from './CalendarEntry.ts';
import { type Minutes, toIso } from './localTime.ts';
import { endOfWork, startInOneGo, type WorkingHours } from './workingTime.ts';

/** What the calendar needs to know of a zone. `standsOnEarlier`: it is reached over tile that was set before. */
export interface ZoneTime {
  readonly number: number;
  /** The floor it is of, where the job has several. */
  readonly floor?: string;
  readonly hours: number;
  /** Its part of the field, joints and all, in square metres. */
  readonly areaM2?: number;
  readonly standsOnEarlier?: boolean;
}

/**
 * Minutes of work, a whole number of quarter hours: a pace is no truer than that.
 *
 * @example
 * quarterHours(2.71) //=> 165
 */
export function quarterHours(hours: number): Minutes {
  return Math.ceil(hours * 4 - 1e-6) * 15;
}

/**
 * Zones set one after the other, each in one go where a day is long enough. A zone that is reached over earlier tile
 * waits until that may be walked on, `walkHours` after it was set.
 */
export function setZones(
  zones: readonly ZoneTime[],
  from: Minutes,
  walkHours: number,
  hours: WorkingHours,
): { readonly entries: readonly CalendarEntry[]; readonly end: Minutes } {
  const entries: CalendarEntry[] = [];
  let end = from;
  for (const [at, zone] of zones.entries()) {
    const wait = at > 0 && zone.standsOnEarlier ? walkHours * 60 : 0;
    const minutes = quarterHours(zone.hours);
    const start = startInOneGo(end + wait, minutes, hours);
    end = endOfWork(start, minutes, hours);
    entries.push({
      code: 'set',
      from: toIso(start),
      to: toIso(end),
      zone: zone.number,
      ...(zone.floor === undefined ? {} : { floor: zone.floor }),
      hours: Math.round(zone.hours * 10_000) / 10_000,
      source: 'pace',
      ...(zone.areaM2 === undefined ? {} : { areaM2: zone.areaM2, paceM2PerHour: zone.areaM2 / zone.hours }),
    });
  }
  return { entries, end };
}
