import { type Notation, notationOf } from './Notation.ts';
import { printDecimal } from './printDecimal.ts';
import { KG_PER_LB } from './readMass.ts';
import type { System } from './Ticks.ts';

/**
 * A mass as a sheet shows it, in pounds or kilograms, to a tenth.
 *
 * @example printMass(22.6796185, 'inches') //=> '50 lb'
 * @example printMass(22.6796185, 'mm') //=> '22.7 kg'
 */
export function printMass(massKg: number, units: System | Notation): string {
  const { system, decimal } = notationOf(units);
  return system === 'mm'
    ? `${printDecimal(massKg, 1, decimal)} kg`
    : `${printDecimal(massKg / KG_PER_LB, 1, decimal)} lb`;
}
