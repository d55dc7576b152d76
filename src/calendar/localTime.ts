import { DateTime } from 'luxon';

/** A moment of local time as whole minutes, as if every clock stood still in one zone all year. */
export type Minutes = number;

export const DAY: Minutes = 24 * 60;

const ZONE = { zone: 'utc' } as const;

/**
 * Minutes of a local date or date and time in ISO 8601 without a zone. Throws a RangeError on anything else.
 *
 * @example
 * toMinutes('2026-12-02T11:00') - toMinutes('2026-12-02') //=> 660
 */
export function toMinutes(iso: string): Minutes {
  const time = DateTime.fromISO(iso, ZONE);
  if (!time.isValid)
    throw new RangeError(`"${iso}" is not a date: write it as 2026-12-02 or 2026-12-02T11:00`);
  return Math.round(time.toMillis() / 60_000);
}

/**
 * Local date and time of minutes, `YYYY-MM-DDTHH:MM`.
 *
 * @example
 * toIso(toMinutes('2026-12-02') + 660) //=> '2026-12-02T11:00'
 */
export function toIso(minutes: Minutes): string {
  return DateTime.fromMillis(minutes * 60_000, ZONE).toFormat("yyyy-MM-dd'T'HH:mm");
}

/**
 * Weekday of minutes, 1 = Monday … 7 = Sunday.
 *
 * @example
 * weekday(toMinutes('2026-12-05')) //=> 6
 */
export function weekday(minutes: Minutes): number {
  return DateTime.fromMillis(minutes * 60_000, ZONE).weekday;
}
