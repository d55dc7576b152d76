/** An exact number as it was written: `2 1/4` is 9 over 4, `98.25` is 9825 over 100. */
export interface Ratio {
  readonly numerator: number;
  readonly denominator: number;
}

/** The forms a number is written in, as the source of a regular expression without groups. */
export const NUMBER = String.raw`(?:(?:\d{1,7}[ -])?\d{1,5}/\d{1,5}|\d{0,7}\.\d{1,9}|\d{1,9}\.?)`;

/**
 * The number in a text: whole, decimal, fraction, or whole and fraction (`2 1/4`, `2-1/4`).
 * Undefined when it is none of these, when the divisor is 0, or when a fraction beside a whole number
 * is not less than one (`2 5/4` is a slip of the pen).
 *
 * @example readRatio('2 1/4') //=> {numerator: 9, denominator: 4}
 * @example readRatio('98.25') //=> {numerator: 9825, denominator: 100}
 * @example readRatio('2 5/4') //=> undefined
 */
export function readRatio(text: string): Ratio | undefined {
  const fraction = /^(?:(\d+)[ -])?(\d+)\/(\d+)$/.exec(text);
  if (fraction) return mixed(fraction[1], Number(fraction[2]), Number(fraction[3]));
  const decimal = /^(\d*)\.?(\d*)$/.exec(text);
  if (!decimal || text === '' || text === '.') return undefined;
  const places = decimal[2]!.length;
  return { numerator: Number(decimal[1]! + decimal[2]!), denominator: 10 ** places };
}

function mixed(whole: string | undefined, numerator: number, denominator: number): Ratio | undefined {
  if (denominator === 0 || (whole !== undefined && numerator >= denominator)) return undefined;
  return { numerator: Number(whole ?? 0) * denominator + numerator, denominator };
}

/**
 * A ratio times a whole factor, rounded once to the nearest whole number (a half goes up).
 *
 * @example roundRatio({numerator: 1, denominator: 3}, 8128) //=> 2709
 */
export function roundRatio(ratio: Ratio, factor: number): number {
  return Math.round((ratio.numerator * factor) / ratio.denominator);
}
