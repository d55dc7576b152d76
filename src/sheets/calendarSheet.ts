import type { CalendarEntry } from '../calendar/CalendarEntry.ts';
import { calendarWait } from './calendarWait.ts';
import { calendarWhat } from './calendarWhat.ts';
import { readingsSpeakAgainst } from './readingsSpeakAgainst.ts';
import type { Sheet } from './Sheet.ts';
import type { SheetContext } from './SheetContext.ts';
import { saySource } from './saySource.ts';

/** When may I walk, grout, seal, shower: clock times for this job, each with the wait it rests on. */
export const calendarSheet: Sheet = {
  name: 'calendar',
  for: 'all',
  bundles: ['owner', 'office', 'packet'],
  speaks: 'owner',
  make: (context) => {
    const rows = context.packet.calendar.map((entry) => calendarRow(context, entry));
    const held = readingsSpeakAgainst(context) ? context.say('heldDates') : '';
    return [{ data: { rows, many: rows.length > ROOMY, held, off: daysOff(context) } }];
  },
};

/** Rows that stand on a page with room between them. */
const ROOMY = 13;

/** The days off from the first entry to the last, as a sentence; empty where there are none. */
function daysOff({ packet, say, date, lang }: SheetContext): string {
  const days = packet.calendar.flatMap(({ from, to = from }) => [from.slice(0, 10), to.slice(0, 10)]).sort();
  // A packet from before there was the setting has none.
  const off = [...(packet.spec.work.daysOff ?? [])].filter((day) => days[0]! <= day && day <= days.at(-1)!);
  if (off.length === 0) return '';
  const listed = new Intl.ListFormat(lang, { type: 'conjunction' }).format(off.sort().map(date));
  return say('sheet.calendar.off', { days: listed });
}

function calendarRow(context: SheetContext, entry: CalendarEntry) {
  const { packet, say, time } = context;
  return {
    from: time(entry.from),
    to: entry.to ? time(entry.to) : '',
    what: calendarWhat(say, entry, packet),
    wait: calendarWait(context, entry),
    source: saySource(say, entry.source),
  };
}
