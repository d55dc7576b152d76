/** Decimals of a millimetre in a drawing: a thousandth is finer than any printer. */
export const decimals = 3;

/**
 * A length in mm as it is written into SVG.
 *
 * @example roundMm(12.34567) //=> '12.346'
 * @example roundMm(-0.0001) //=> '0'
 */
export function roundMm(mm: number): string {
  return String(Number(mm.toFixed(decimals)) + 0);
}
