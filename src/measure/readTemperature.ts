import { plainText } from './plainText.ts';
import { type QuantityFault, readQuantity, type Units } from './readQuantity.ts';

/** A temperature in degrees Celsius, or why it is not one. */
export type TemperatureReading =
  | { readonly ok: true; readonly tempC: number }
  | { readonly ok: false; readonly code: QuantityFault; readonly found: string };

const SCALES: Units = [
  [/^(?:°|º|deg(?:rees)?)? ?(?:f|fahrenheit)$/i, 5 / 9],
  [/^(?:°|º|deg(?:rees)?)? ?(?:c|celsius)$/i, 1],
];

/**
 * A temperature with its scale; it may be under zero.
 *
 * @example readTemperature('50 F') //=> {ok: true, tempC: 10}
 * @example readTemperature('-5 °C') //=> {ok: true, tempC: -5}
 */
export function readTemperature(value: unknown): TemperatureReading {
  const minus = typeof value === 'string' && plainText(value).startsWith('-');
  const reading = readQuantity(minus ? plainText(value).slice(1).trim() : value, SCALES);
  if (!reading.ok) return minus ? { ...reading, found: value } : reading;
  const degrees = minus ? -reading.value : reading.value;
  return { ok: true, tempC: reading.perUnit === 1 ? degrees : ((degrees - 32) * 5) / 9 };
}
