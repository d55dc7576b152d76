import type { CalendarEntry } from '../calendar/CalendarEntry.ts';

/** Work that is done in the room. */
const IN_ROOM: ReadonlySet<string> = new Set(['comesOut', 'lift', 'fill', 'layer', 'set']);

/** Work that leaves a floor on which nobody may step. */
const SOFT: ReadonlySet<string> = new Set(['fill', 'layer', 'set']);

/**
 * When the work in the room begins: from then on nobody but the crew is in it. Undefined where nothing is set.
 *
 * @example roomCloses([{ code: 'laboratory', from: 'a', source: '' }, { code: 'lift', from: 'b', source: '' }])?.from //=> 'b'
 */
export function roomCloses(calendar: readonly CalendarEntry[]): CalendarEntry | undefined {
  return calendar.find(({ code }) => IN_ROOM.has(code));
}

/**
 * When the first patch, layer or tile is laid: from then on nobody walks there.
 *
 * @example floorSoft([{ code: 'lift', from: 'b', source: '' }, { code: 'fill', from: 'c', source: '' }])?.from //=> 'c'
 */
export function floorSoft(calendar: readonly CalendarEntry[]): CalendarEntry | undefined {
  return calendar.find(({ code }) => SOFT.has(code));
}
