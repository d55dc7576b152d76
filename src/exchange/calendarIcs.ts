import ical from 'ical-generator';
import type { CalendarEntry } from '../calendar/CalendarEntry.ts';
import type { Say } from '../drawing/index.ts';
import { hoursAndMinutes } from '../measure/index.ts';
import type { Packet } from '../packet/Packet.ts';
import { calendarWhat } from '../sheets/calendarWhat.ts';

/** Minutes that a mere moment, such as "walk from here on", takes up in a calendar. */
const moment = 15;

/** Local time without a zone: wherever the calendar is opened, eight o'clock stays eight o'clock. */
const localTime = (iso: string) => new Date(`${iso}:00Z`);

function eventOf(packet: Packet, entry: CalendarEntry, i: number, say: Say) {
  const { job } = packet;
  const start = localTime(entry.from);
  const end = entry.to ? localTime(entry.to) : new Date(start.getTime() + moment * 60_000);
  const summary = calendarWhat(say, entry, packet);
  return {
    id: `${job.slug}-${job.revision}-${i + 1}@tile-job-packet`,
    start,
    end,
    floating: true,
    stamp: localTime(`${job.date}T00:00`),
    summary: `${job.title}: ${summary}`,
    location: job.place,
    description: entry.hours ? say('calendar.wait', hoursAndMinutes(entry.hours)) : '',
  };
}

/** The job's clock times as iCalendar (RFC 5545), in floating local time. */
export function calendarIcs(packet: Packet, say: Say): string {
  const calendar = ical({
    name: packet.job.title,
    prodId: { company: 'tile-job-packet', product: 'calendar' },
  });
  packet.calendar.forEach((entry, i) => {
    calendar.createEvent(eventOf(packet, entry, i, say));
  });
  return calendar.toString();
}
