import type { CalendarEntry } from '../calendar/CalendarEntry.ts';
import type { Packet } from '../packet/Packet.ts';
import { isLaid } from './isLaid.ts';
import type { Say } from './SheetView.ts';
import { sayThing } from './sayThing.ts';

/** What is done or may be done at a time of the calendar; things of the job in the sheet's language. */
export function calendarWhat(
  say: Say,
  entry: CalendarEntry,
  { spec, job }: Pick<Packet, 'spec' | 'job'>,
): string {
  // Who comes to seal is agreed before the tile lies.
  if (entry.code === 'seal' && entry.who === undefined && isLaid({ job })) return say('calendar.sealLaid');
  return say(`calendar.${entry.code}`, {
    zone: entry.zone ?? 0,
    floor: entry.floor ?? 'none',
    hours: entry.hours ?? 0,
    units: spec.print.system,
    who: entry.who === undefined ? 'none' : sayThing(say, entry.who),
    concerns: entry.concerns ?? 'none',
    furniture: entry.furniture ?? 'now',
    things: (entry.things ?? []).map((name) => sayThing(say, name)).join(', '),
  });
}
