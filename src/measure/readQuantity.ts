import { foundText } from './foundText.ts';
import { plainText } from './plainText.ts';
import { NUMBER, readRatio } from './Ratio.ts';

/** Why a text is not the quantity that was asked for. */
export type QuantityFault = 'bareNumber' | 'notAQuantity' | 'notText';

/** A number with its unit still beside it, or why there is none. */
export type QuantityReading =
  | { readonly ok: true; readonly value: number; readonly perUnit: number }
  | { readonly ok: false; readonly code: QuantityFault; readonly found: string };

/** How many of the base unit one of a written unit is; the first pattern that fits the whole unit wins. */
export type Units = readonly (readonly [pattern: RegExp, perUnit: number])[];

const FORM = new RegExp(`^(${NUMBER}) ?(\\D.*)$`);
const BARE = new RegExp(`^${NUMBER}$`);

/**
 * A number and one of the units of a table. The caller multiplies `value` by `perUnit`.
 *
 * @example readQuantity('2 1/2 days', [[/^days?$/, 24]]) //=> {ok: true, value: 2.5, perUnit: 24}
 * @example readQuantity(50, [[/^lb$/, 1]]) //=> {ok: false, code: 'bareNumber', found: '50'}
 */
export function readQuantity(value: unknown, units: Units): QuantityReading {
  const found = foundText(value);
  if (typeof value === 'number') return { ok: false, code: 'bareNumber', found };
  if (typeof value !== 'string') return { ok: false, code: 'notText', found };
  const text = plainText(value);
  if (BARE.test(text)) return { ok: false, code: 'bareNumber', found };
  const form = FORM.exec(text);
  const ratio = form ? readRatio(form[1]!) : undefined;
  const unit = units.find(([pattern]) => pattern.test(form?.[2] ?? ''));
  if (!ratio || !unit) return { ok: false, code: 'notAQuantity', found };
  return { ok: true, value: ratio.numerator / ratio.denominator, perUnit: unit[1] };
}
