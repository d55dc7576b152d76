import { type QuantityFault, readQuantity, type Units } from './readQuantity.ts';

/** A volume in litres, or why it is not one. */
export type VolumeReading =
  | { readonly ok: true; readonly litres: number }
  | { readonly ok: false; readonly code: QuantityFault; readonly found: string };

/** A US liquid gallon (231 cubic inches) in litres, exactly: NIST Handbook 44, Appendix C. */
export const LITRES_PER_GALLON = 3.785411784;
/** A cubic foot in litres, exactly: NIST Handbook 44, Appendix C. */
export const LITRES_PER_CU_FT = 28.316846592;

const VOLUMES: Units = [
  [/^(?:gal\.?|gallons?)$/i, LITRES_PER_GALLON],
  [/^(?:qt\.?|quarts?)$/i, LITRES_PER_GALLON / 4],
  [/^(?:pt\.?|pints?)$/i, LITRES_PER_GALLON / 8],
  [/^(?:fl\.? ?oz\.?|fluid ounces?)$/i, LITRES_PER_GALLON / 128],
  [/^(?:cu\.? ?ft\.?|ft[3³]|cubic f(?:oo|ee)t)$/i, LITRES_PER_CU_FT],
  [/^(?:ml|millilit(?:re|er)s?)$/i, 0.001],
  [/^(?:l|lit(?:re|er)s?)$/i, 1],
];

/**
 * A volume with its unit; gallons, quarts and fluid ounces are US ones.
 *
 * @example readVolume('1 gal') //=> {ok: true, litres: 3.785411784}
 * @example readVolume('2.5 L') //=> {ok: true, litres: 2.5}
 */
export function readVolume(value: unknown): VolumeReading {
  const reading = readQuantity(value, VOLUMES);
  return reading.ok ? { ok: true, litres: reading.value * reading.perUnit } : reading;
}
