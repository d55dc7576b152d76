import { type QuantityFault, readQuantity, type Units } from './readQuantity.ts';

/** A mass in kilograms, or why it is not one. */
export type MassReading =
  | { readonly ok: true; readonly massKg: number }
  | { readonly ok: false; readonly code: QuantityFault; readonly found: string };

/** An avoirdupois pound in kilograms, exactly: NIST Handbook 44, Appendix C. */
export const KG_PER_LB = 0.45359237;

const MASSES: Units = [
  [/^(?:lbs?\.?|pounds?)$/i, KG_PER_LB],
  [/^(?:oz\.?|ounces?)$/i, KG_PER_LB / 16],
  [/^(?:kgs?|kilograms?|kilos?)$/i, 1],
  [/^(?:g|grams?)$/i, 0.001],
];

/**
 * A mass with its unit, such as a bag's.
 *
 * @example readMass('20 kg') //=> {ok: true, massKg: 20}
 * @example readMass('100 lb') //=> {ok: true, massKg: 45.359237}
 */
export function readMass(value: unknown): MassReading {
  const reading = readQuantity(value, MASSES);
  return reading.ok ? { ok: true, massKg: reading.value * reading.perUnit } : reading;
}
