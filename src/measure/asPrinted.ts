import { KG_PER_LB } from './readMass.ts';
import { LITRES_PER_GALLON } from './readVolume.ts';
import type { System } from './Ticks.ts';

export const FL_OZ_PER_GALLON = 128;

/** What is less than a gallon is sold and poured by the fluid ounce. */
export function isPoured(litres: number): boolean {
  return litres < LITRES_PER_GALLON;
}

/**
 * The mass that a reader takes from `printMass`, in kilograms, so that what is reckoned on with it adds up on paper.
 *
 * @example
 * massAsPrinted(21.3402, 'mm') //=> 21.3
 */
export function massAsPrinted(massKg: number, system: System): number {
  return toDecimals(massKg, system === 'mm' ? 1 : KG_PER_LB, 1);
}

/**
 * The volume that a reader takes from a sheet, in litres: to a hundredth of a litre or gallon, of less than a gallon to a tenth of a
 * fluid ounce.
 *
 * @example
 * volumeAsPrinted(12.0789, 'mm') //=> 12.08
 */
export function volumeAsPrinted(litres: number, system: System): number {
  if (system === 'mm') return toDecimals(litres, 1, 2);
  return isPoured(litres)
    ? toDecimals(litres, LITRES_PER_GALLON / FL_OZ_PER_GALLON, 1)
    : toDecimals(litres, LITRES_PER_GALLON, 2);
}

/**
 * Decimals with which a rate is printed: what is multiplied with it must come out as printed.
 *
 * @example
 * rateDecimals(13.3526) //=> 2
 * rateDecimals(1.6) //=> 3
 */
export function rateDecimals(rate: number): number {
  return rate < 10 ? 3 : 2;
}

/**
 * A density that a reader takes from a sheet, in kilograms a litre.
 *
 * @example
 * densityAsPrinted(1.6, 'mm') //=> 1.6
 */
export function densityAsPrinted(kgPerLitre: number, system: System): number {
  const unit = system === 'mm' ? 1 : KG_PER_LB / LITRES_PER_GALLON;
  return toDecimals(kgPerLitre, unit, rateDecimals(kgPerLitre / unit));
}

function toDecimals(value: number, unit: number, decimals: number): number {
  const scale = 10 ** decimals;
  return (Math.round((value / unit) * scale) / scale) * unit;
}
