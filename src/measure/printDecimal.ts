/**
 * A number to at most `places` decimals, without zeros behind, with a true minus sign.
 *
 * @example printDecimal(22.6796, 1) //=> '22.7'
 * @example printDecimal(-50, 1) //=> '−50'
 */
export function printDecimal(value: number, places: number): string {
  const digits = Math.abs(value).toFixed(places);
  const short = places > 0 ? digits.replace(/\.?0+$/, '') : digits;
  return value < 0 && Number(short) !== 0 ? `−${short}` : short;
}
