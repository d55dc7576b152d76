import { TICKS_PER_INCH, type Ticks } from '../measure/index.ts';

/** Readings of one distance that differ by more than this are not of one distance. Common practice, no source. */
export const mostSpread: Ticks = 2 * TICKS_PER_INCH;

/** Angles by eye may be out by this much in all before they must be said better. Common practice, no source. */
export const mostAngleMisclosureDeg = 15;

/**
 * The largest misclosure that is spread over the readings: 2 in, or 1 % of the walk round the room where that is more.
 * Common practice, no source.
 *
 * @example
 * misclosureLimit(100000) //=> 16256
 * misclosureLimit(2000000) //=> 20000
 */
export function misclosureLimit(perimeter: Ticks): Ticks {
  return Math.max(2 * TICKS_PER_INCH, Math.round(perimeter / 100));
}
