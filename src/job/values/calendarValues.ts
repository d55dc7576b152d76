import { bad, good, type Reader } from '../shape/Reader.ts';

function isRealDate(text: string): boolean {
  const [, year, month, day] = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text) ?? [];
  if (year === undefined || Number(year) < 1000) return false;
  const date = new Date(Date.UTC(Number(year), Number(month) - 1, Number(day)));
  return date.getUTCMonth() === Number(month) - 1 && date.getUTCDate() === Number(day);
}

/**
 * A day of the calendar, year first: `2027-03-01`.
 *
 * @example
 * date.read('2028-02-29') //=> { ok: true, value: '2028-02-29' }
 * date.read('2027-02-29').code //=> 'notADate'
 */
export const date: Reader<string> = {
  read: (value) => {
    const text = String(value).trim();
    return isRealDate(text) ? good(text) : bad('notADate');
  },
  standIn: '2000-01-03',
  json: { type: 'string', format: 'date', examples: ['2027-03-01'] },
};

/**
 * A public holiday or another day off, or the word `none`.
 *
 * @example
 * dayOff.read('2027-05-31') //=> { ok: true, value: ['2027-05-31'] }
 * dayOff.read('none') //=> { ok: true, value: [] }
 * dayOff.read('Christmas').code //=> 'notADayOff'
 */
export const dayOff: Reader<readonly string[]> = {
  read: (value) => {
    if (value === 'none') return good([]);
    const read = date.read(value);
    return read.ok ? good([read.value]) : bad('notADayOff');
  },
  standIn: [],
  json: { anyOf: [{ const: 'none' }, date.json] },
};

const DAYS = ['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun'];

function dayNumber(word: string): number {
  return /^[a-z]{3,9}$/.test(word) ? DAYS.indexOf(word.slice(0, 3)) + 1 : 0;
}

function span(from: number, to: number): readonly number[] {
  const days = (to - from + 7) % 7;
  return Array.from({ length: days + 1 }, (_, i) => ((from - 1 + i) % 7) + 1);
}

/**
 * Working weekdays, 1 = Monday: `mon-fri`, `mon, wed, fri` or `mon-thu, sat`.
 *
 * @example
 * days.read('mon-thu, sat') //=> { ok: true, value: [1, 2, 3, 4, 6] }
 * days.read('weekdays').code //=> 'notDays'
 */
export const days: Reader<readonly number[]> = {
  read: (value) => {
    const parts = String(value)
      .toLowerCase()
      .split(/[,\s]+(?![-–])/)
      .map((part) => part.split(/[-–]/).map((word) => dayNumber(word.trim())));
    if (parts.some((part) => part.length > 2 || part.includes(0))) return bad('notDays');
    const found = parts.flatMap(([from, to]) => span(from!, to ?? from!));
    return good([...new Set(found)].sort((a, b) => a - b));
  },
  standIn: [1],
  json: { type: 'string', examples: ['mon-fri', 'mon, wed, fri'] },
};

function minutes(hour: string, minute: string): number {
  const at = Number(hour) * 60 + Number(minute);
  return Number(hour) <= 24 && Number(minute) < 60 && at <= 1440 ? at : Number.NaN;
}

/**
 * Start and end of the working day in minutes after midnight.
 *
 * @example
 * hours.read('08:00-16:30') //=> { ok: true, value: [480, 990] }
 * hours.read('16:00-08:00').code //=> 'notHours'
 */
export const hours: Reader<readonly [number, number]> = {
  read: (value) => {
    const form = /^(\d{1,2}):(\d{2}) *(?:[-–—]|to) *(\d{1,2}):(\d{2})$/.exec(String(value).trim());
    if (!form) return bad('notHours');
    const [from, to] = [minutes(form[1]!, form[2]!), minutes(form[3]!, form[4]!)];
    return from < to ? good([from, to]) : bad('notHours');
  },
  standIn: [480, 990],
  json: { type: 'string', examples: ['08:00-16:30'] },
};
