import type { CalendarEntry } from './CalendarEntry.ts';
import { morningAfter } from './daytime.ts';
import { type Minutes, toIso } from './localTime.ts';

/** When something is, and where its wait comes to another moment, that one and why it is another. */
type Told = Pick<CalendarEntry, 'from' | 'due' | 'moved'>;

/**
 * A time that is told, and the moment that it rests on where that is another one.
 *
 * @example
 * told(480, 0, 'work') //=> { from: '1970-01-01T08:00', due: '1970-01-01T00:00', moved: 'work' }
 * told(480, 480, 'work') //=> { from: '1970-01-01T08:00' }
 */
export function told(moment: Minutes, due: Minutes, moved: NonNullable<CalendarEntry['moved']>): Told {
  return { from: toIso(moment), ...(moment === due ? {} : { due: toIso(due), moved }) };
}

/**
 * A moment from which something may be done, told for when people are up.
 *
 * @example toldByDay(60) //=> { from: '1970-01-01T07:00', due: '1970-01-01T01:00', moved: 'night' }
 */
export function toldByDay(moment: Minutes): Told {
  return told(morningAfter(moment), moment, 'night');
}
