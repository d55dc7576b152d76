import { DAY, type Minutes } from './localTime.ts';

/** When people are up, in minutes after midnight: 07:00 to 21:00; common practice, no source. */
const UP = { from: 7 * 60, to: 21 * 60 } as const;

/**
 * The moment from which something may be done, told for people: at night it is the next morning.
 *
 * @example
 * morningAfter(600) //=> 600
 * morningAfter(1380) //=> 1860
 * morningAfter(60) //=> 420
 */
export function morningAfter(moment: Minutes): Minutes {
  const day = Math.floor(moment / DAY) * DAY;
  if (moment - day < UP.from) return day + UP.from;
  return moment - day > UP.to ? day + DAY + UP.from : moment;
}

/**
 * The moment by which something must be done, told for people: at night it is the evening before.
 *
 * @example
 * eveningBefore(600) //=> 600
 * eveningBefore(1380) //=> 1260
 * eveningBefore(1500) //=> 1260
 */
export function eveningBefore(moment: Minutes): Minutes {
  const day = Math.floor(moment / DAY) * DAY;
  if (moment - day < UP.from) return day - DAY + UP.to;
  return moment - day > UP.to ? day + UP.to : moment;
}
