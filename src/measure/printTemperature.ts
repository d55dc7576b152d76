import { printDecimal } from './printDecimal.ts';
import type { System } from './Ticks.ts';

/**
 * A temperature as a sheet shows it, to a whole degree.
 *
 * @example printTemperature(10, 'inches') //=> '50 °F'
 * @example printTemperature(-5, 'mm') //=> '−5 °C'
 */
export function printTemperature(tempC: number, system: System): string {
  return system === 'mm' ? `${printDecimal(tempC, 0)} °C` : `${printDecimal((tempC * 9) / 5 + 32, 0)} °F`;
}
