/** The place where a rising function reaches a value, by halving. */
function rootOf(rising: (x: number) => number, value: number, high: number): number {
  let [from, to] = [0, high];
  for (let turn = 0; turn < 80; turn++) {
    const middle = (from + to) / 2;
    if (rising(middle) < value) from = middle;
    else to = middle;
  }
  return (from + to) / 2;
}

/** Natural logarithm of the gamma function at n / 2. */
function logGammaOfHalf(n: number): number {
  let sum = n % 2 === 0 ? 0 : Math.log(Math.PI) / 2;
  for (let k = n - 2; k > 0; k -= 2) sum += Math.log(k / 2);
  return sum;
}

/** Probability that chi-square of `freedom` degrees is at most x, by the series of the incomplete gamma function. */
function chiSquareBelow(x: number, freedom: number): number {
  if (x <= 0) return 0;
  const a = freedom / 2;
  let term = Math.exp(a * Math.log(x / 2) - x / 2 - logGammaOfHalf(freedom + 2));
  let sum = 0;
  for (let k = 1; term > 1e-16 * sum; k++) {
    sum += term;
    term *= x / 2 / (a + k);
  }
  return sum;
}

/**
 * The value that chi-square of some degrees of freedom does not pass in a share of all cases.
 *
 * Source: Abramowitz and Stegun, Handbook of Mathematical Functions, 26.4.19 and 6.5.29.
 *
 * @example
 * Math.round(1000 * chiSquareLimit(0.95, 1)) //=> 3841
 */
export function chiSquareLimit(share: number, freedom: number): number {
  return rootOf((x) => chiSquareBelow(x, freedom), share, 20 * freedom + 100);
}

/** Probability that Student's t lies between -t and t. */
function studentWithin(t: number, freedom: number): number {
  const angle = Math.atan(t / Math.sqrt(freedom));
  const square = Math.cos(angle) ** 2;
  const odd = freedom % 2 === 1;
  let term = odd ? Math.cos(angle) : 1;
  let sum = freedom === 1 ? 0 : term;
  for (let k = odd ? 2 : 1; k <= freedom - 3; k += 2) {
    term *= (square * k) / (k + 1);
    sum += term;
  }
  return odd ? (2 / Math.PI) * (angle + Math.sin(angle) * sum) : Math.sin(angle) * sum;
}

/**
 * The value between which and its negative Student's t of some degrees of freedom lies in a share of all cases.
 *
 * Source: Abramowitz and Stegun, Handbook of Mathematical Functions, 26.7.3 and 26.7.4.
 *
 * @example
 * Math.round(1000 * studentLimit(0.95, 10)) //=> 2228
 */
export function studentLimit(share: number, freedom: number): number {
  return rootOf((t) => studentWithin(t, freedom), share, 1e6);
}

/**
 * The value between which and its negative Pope's tau of some degrees of freedom, 2 or more, lies in a share of all cases.
 *
 * Source: Pope, The statistics of residuals and the detection of outliers, NOAA Technical Report NOS 65 NGS 1, 1976.
 *
 * @example
 * Math.round(1000 * tauLimit(0.95, 2)) //=> 1410
 */
export function tauLimit(share: number, freedom: number): number {
  const t = studentLimit(share, freedom - 1);
  return (t * Math.sqrt(freedom)) / Math.sqrt(freedom - 1 + t * t);
}
