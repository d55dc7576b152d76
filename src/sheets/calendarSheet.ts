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
    return [{ data: { rows, many: rows.length > ROOMY, held } }];
  },
};

/** Rows that stand on a page with room between them. */
const ROOMY = 13;

function calendarRow(context: SheetContext, entry: CalendarEntry) {
  const { say, time, units } = context;
  return {
    from: time(entry.from),
    to: entry.to ? time(entry.to) : '',
    what: calendarWhat(say, entry, units.system),
    wait: calendarWait(context, entry),
    source: saySource(say, entry.source),
  };
}
