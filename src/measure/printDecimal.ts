import type { DecimalMark } from './Notation.ts';

/**
 * A number to at most `places` decimals, without zeros behind, with a true minus sign, and with a point unless told otherwise.
 *
 * @example printDecimal(22.6796, 1) //=> '22.7'
 * @example printDecimal(-50, 1) //=> '−50'
 * @example printDecimal(22.6796, 1, ',') //=> '22,7'
 */
export function printDecimal(value: number, places: number, decimal: DecimalMark = '.'): string {
  const digits = Math.abs(value).toFixed(places);
  const short = places > 0 ? digits.replace(/\.?0+$/, '') : digits;
  const marked = short.replace('.', decimal);
  return value < 0 && Number(short) !== 0 ? `−${marked}` : marked;
}
