import { type QuantityFault, readQuantity, type Units } from './readQuantity.ts';

/** An area in square metres, or why it is not one. */
export type AreaReading =
  | { readonly ok: true; readonly areaM2: number }
  | { readonly ok: false; readonly code: QuantityFault; readonly found: string };

/** A square foot in square metres, exactly: NIST Handbook 44, Appendix C. */
export const M2_PER_SQ_FT = 0.09290304;

const AREAS: Units = [
  [/^(?:sq\.? ?(?:ft\.?|feet|foot)|ft\.?[2²]|square (?:feet|foot))$/i, M2_PER_SQ_FT],
  [/^(?:sq\.? ?(?:in\.?|inch(?:es)?)|in\.?[2²]|square inch(?:es)?)$/i, M2_PER_SQ_FT / 144],
  [/^(?:sq\.? ?(?:yd\.?|yards?)|yd\.?[2²]|square yards?)$/i, M2_PER_SQ_FT * 9],
  [/^(?:sq\.? ?m|m[2²]|square met(?:re|er)s?)$/i, 1],
];

/**
 * An area with its unit.
 *
 * @example readArea('18.5 m2') //=> {ok: true, areaM2: 18.5}
 * @example readArea('100 sq ft') //=> {ok: true, areaM2: 9.290304}
 * @example readArea('100') //=> {ok: false, code: 'bareNumber', found: '100'}
 */
export function readArea(value: unknown): AreaReading {
  const reading = readQuantity(value, AREAS);
  return reading.ok ? { ok: true, areaM2: reading.value * reading.perUnit } : reading;
}
