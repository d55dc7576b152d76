import type { DecimalMark } from '../measure/index.ts';

const known = new Map<string, DecimalMark>();

/**
 * The mark between the whole part of a number and its decimals in a language or a locale.
 *
 * @example decimalMark('en') //=> '.'
 * @example decimalMark('es-US') //=> '.'
 * @example decimalMark('pt') //=> ','
 */
export function decimalMark(lang: string): DecimalMark {
  const mark = known.get(lang) ?? askMark(lang);
  known.set(lang, mark);
  return mark;
}

function askMark(lang: string): DecimalMark {
  const parts = new Intl.NumberFormat(lang).formatToParts(0.5);
  return parts.some(({ type, value }) => type === 'decimal' && value === ',') ? ',' : '.';
}
