/**
 * A number to two decimals, as it is shown in a sum.
 *
 * @example
 * rounded(6.1149) //=> 6.11
 */
export function rounded(value: number, decimals = 2): number {
  const scale = 10 ** decimals;
  return Math.round(value * scale) / scale;
}

/**
 * Whole packages for an amount; what is over by less than a thousandth is not a package.
 *
 * @example
 * packages(3.0001) //=> 3
 * packages(3.01) //=> 4
 */
export function packages(amount: number): number {
  return Math.ceil(amount - 0.001);
}
