import type { CalendarEntry } from '../calendar/CalendarEntry.ts';
import { hoursAndMinutes, M2_PER_SQ_FT, printArea, printTemperature } from '../measure/index.ts';
import { COLD } from '../trade/index.ts';
import type { SheetContext } from './SheetContext.ts';

/**
 * What a time of the calendar rests on: the wait or the working time with its sum, the cold that makes a wait longer, and where the
 * time is not the one that the sum comes to, that one and why.
 */
export function calendarWait(
  context: Pick<SheetContext, 'say' | 'time' | 'units' | 'number'>,
  entry: CalendarEntry,
): string {
  const { say, time } = context;
  if (!entry.hours) return '';
  const wait = say('calendar.wait', hoursAndMinutes(entry.hours));
  return [
    sumOf(context, entry, wait),
    ...(entry.due && entry.moved
      ? [
          say(`calendar.moved.${movedBy(entry)}`, {
            due: time(entry.due),
            latest: entry.latest ? time(entry.latest) : '',
          }),
        ]
      : []),
  ].join('; ');
}

/** Why a time is not the one that its sum comes to: work that is put off to another day begins there with the morning. */
function movedBy({ from, due = from, moved }: CalendarEntry) {
  return moved === 'work' && from.slice(0, 10) !== due.slice(0, 10) ? 'morning' : moved;
}

function sumOf(
  { say, units, number }: Pick<SheetContext, 'say' | 'units' | 'number'>,
  { areaM2, paceM2PerHour, warmHours, tempC }: CalendarEntry,
  wait: string,
): string {
  if (areaM2 !== undefined && paceM2PerHour !== undefined) {
    const pace =
      units.system === 'mm'
        ? `${number(paceM2PerHour, 2)} m²`
        : `${number(paceM2PerHour / M2_PER_SQ_FT)} sq ft`;
    return say('calendar.pace', { area: printArea(areaM2, units), pace, wait });
  }
  if (warmHours === undefined || tempC === undefined) return wait;
  const [temp, full] = [tempC, COLD.value.fullC].map((one) => printTemperature(one, units.system));
  return say('calendar.cold', {
    wait,
    warm: say('calendar.wait', hoursAndMinutes(warmHours)),
    temp: temp!,
    full: full!,
  });
}
