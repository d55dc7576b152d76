import { type QuantityFault, readQuantity, type Units } from './readQuantity.ts';

/** A length of time in hours, or why it is not one. */
export type TimeReading =
  | { readonly ok: true; readonly hours: number }
  | { readonly ok: false; readonly code: QuantityFault; readonly found: string };

const TIMES: Units = [
  [/^(?:h|hrs?\.?|hours?)$/i, 1],
  [/^(?:mins?\.?|minutes?)$/i, 1 / 60],
  [/^(?:d|days?)$/i, 24],
  [/^(?:wks?\.?|weeks?)$/i, 168],
];

/**
 * A length of time with its unit, in clock hours: a day is 24.
 *
 * @example readTime('3 days') //=> {ok: true, hours: 72}
 * @example readTime('90 min') //=> {ok: true, hours: 1.5}
 */
export function readTime(value: unknown): TimeReading {
  const reading = readQuantity(value, TIMES);
  return reading.ok ? { ok: true, hours: reading.value * reading.perUnit } : reading;
}
