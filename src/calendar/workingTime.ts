import { DAY, type Minutes, toIso, weekday } from './localTime.ts';

/** Working weekdays, days off among them as ISO dates, and the hours of a working day, in minutes after midnight. */
export interface WorkingHours {
  readonly days: readonly number[];
  readonly daysOff?: readonly string[];
  readonly startMinute: number;
  readonly endMinute: number;
}

/**
 * Start of the first working day at or after a moment. Where no weekday is a working day, every day is.
 *
 * @example
 * nextDayStart(1, { days: [1, 2, 3, 4, 5], startMinute: 480, endMinute: 990 }) //=> 480
 * nextDayStart(1, { days: [1, 2, 3, 4, 5], daysOff: ['1970-01-01'], startMinute: 480, endMinute: 990 }) //=> 1920
 */
export function nextDayStart(moment: Minutes, hours: WorkingHours): Minutes {
  let day = Math.floor(moment / DAY) * DAY;
  while (!isWorkingDay(day, hours) || day + hours.startMinute < moment) day += DAY;
  return day + hours.startMinute;
}

/**
 * First working minute at or after a moment.
 *
 * @example
 * nextWorking(600, { days: [4], startMinute: 480, endMinute: 990 }) //=> 600
 * nextWorking(60, { days: [4], startMinute: 480, endMinute: 990 }) //=> 480
 */
export function nextWorking(moment: Minutes, hours: WorkingHours): Minutes {
  const day = Math.floor(moment / DAY) * DAY;
  const open =
    isWorkingDay(day, hours) && moment >= day + hours.startMinute && moment < day + hours.endMinute;
  return open ? moment : nextDayStart(moment, hours);
}

/**
 * Moment at which work that takes so many minutes ends, resting outside working hours.
 *
 * @example
 * endOfWork(900, 120, { days: [4, 5], startMinute: 480, endMinute: 960 }) //=> 1980
 */
export function endOfWork(start: Minutes, minutes: Minutes, hours: WorkingHours): Minutes {
  let moment = nextWorking(start, hours);
  let rest = minutes;
  for (;;) {
    const left = Math.floor(moment / DAY) * DAY + hours.endMinute - moment;
    if (rest <= left || hours.endMinute <= hours.startMinute) return moment + rest;
    rest -= left;
    moment = nextWorking(moment + left, hours);
  }
}

/**
 * Start of work that is to be done in one go: now if it fits in what is left of the day, else the next working day. Work
 * longer than a day starts at once.
 *
 * @example
 * startInOneGo(900, 120, { days: [4, 5], startMinute: 480, endMinute: 960 }) //=> 1920
 */
export function startInOneGo(from: Minutes, minutes: Minutes, hours: WorkingHours): Minutes {
  const start = nextWorking(from, hours);
  const end = Math.floor(start / DAY) * DAY + hours.endMinute;
  const fitsADay = minutes <= hours.endMinute - hours.startMinute;
  return fitsADay && start + minutes > end ? nextDayStart(end, hours) : start;
}

function isWorkingDay(day: Minutes, { days, daysOff = [] }: WorkingHours): boolean {
  if (daysOff.length > 0 && daysOff.includes(toIso(day).slice(0, 10))) return false;
  return !days.some((d) => d >= 1 && d <= 7) || days.includes(weekday(day));
}
