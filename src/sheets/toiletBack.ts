import type { CalendarEntry } from '../calendar/CalendarEntry.ts';

/**
 * From when on a toilet that came out may go back: once heavy things may, or where nobody can join it before the sealer is dry, then.
 *
 * @example toiletBack([{ code: 'heavy', from: 'a', source: '' }, { code: 'furniture', from: 'b', source: '' }])?.from //=> 'a'
 */
export function toiletBack(calendar: readonly CalendarEntry[]): CalendarEntry | undefined {
  const at = (asked: string) => calendar.find(({ code }) => code === asked);
  const heavy = at('heavy');
  return heavy?.furniture === 'allLater' ? at('furniture') : heavy;
}
