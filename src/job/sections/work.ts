import * as z from 'zod';
import type { Work } from '../Job.ts';
import { leaf, listOf } from '../shape/leaf.ts';
import { date, dayOff, days, hours } from '../values/calendarValues.ts';
import { pace, temperature } from '../values/quantities.ts';
import { type Notes, noteDefault, orDefault } from './Notes.ts';

/** When and how fast the work goes. */
export const workSchema = z
  .strictObject({
    from: leaf(date, 'First working day.').optional(),
    days: listOf(days, 'Working days, such as mon-fri.').optional(),
    'days off': listOf(
      dayOff,
      'Public holidays and other days off, such as [2027-05-31, 2027-07-05].',
    ).optional(),
    hours: leaf(hours, 'Working hours, such as 08:00-16:30.').optional(),
    pace: leaf(pace, 'How much is set in an hour.').optional(),
    temperature: leaf(temperature, 'Temperature of the room while mortar and grout cure.').optional(),
  })
  .meta({ description: 'Days, hours and pace of the work.' });

const PACE = { inches: '12 sq ft an hour', mm: '1.1 m2 an hour' };

/** Working time with its defaults; the first day is that of the revision unless told. */
export function buildWork(
  given: z.output<typeof workSchema> | undefined,
  revisionDate: string,
  notes: Notes,
): Work {
  if (!given?.from) noteDefault(notes, ['work', 'from'], revisionDate);
  if (!given?.['days off']) noteDefault(notes, ['work', 'days off'], 'none');
  const written = given?.days && [...new Set(given.days.flat())].sort((a, b) => a - b);
  const [startMinute, endMinute] = orDefault(notes, given?.hours, ['work', 'hours'], '08:00-16:30', hours);
  return {
    from: given?.from ?? revisionDate,
    days: orDefault(notes, written, ['work', 'days'], 'mon-fri', days),
    daysOff: given?.['days off']?.flat() ?? [],
    startMinute,
    endMinute,
    paceM2PerHour: orDefault(notes, given?.pace, ['work', 'pace'], PACE, pace),
    tempC: orDefault(
      notes,
      given?.temperature,
      ['work', 'temperature'],
      { inches: '70 F', mm: '21 C' },
      temperature,
    ),
  };
}
