import { type Notation, notationOf } from './Notation.ts';
import { printDecimal } from './printDecimal.ts';
import { LITRES_PER_GALLON } from './readVolume.ts';
import type { System } from './Ticks.ts';

/**
 * A volume as a sheet shows it, in US gallons or litres, to a hundredth.
 *
 * @example printVolume(3.785411784, 'inches') //=> '1 gal'
 * @example printVolume(3.785411784, 'mm') //=> '3.79 L'
 */
export function printVolume(litres: number, units: System | Notation): string {
  const { system, decimal } = notationOf(units);
  return system === 'mm'
    ? `${printDecimal(litres, 2, decimal)} L`
    : `${printDecimal(litres / LITRES_PER_GALLON, 2, decimal)} gal`;
}
