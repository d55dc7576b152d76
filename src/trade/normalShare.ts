/**
 * Share of a normal spread that lies below so many standard deviations, to 1e-7. Abramowitz and Stegun,
 * Handbook of Mathematical Functions, formula 26.2.17.
 *
 * @example normalShare(0).toFixed(6) //=> '0.500000'
 * @example normalShare(1.96).toFixed(4) //=> '0.9750'
 * @example normalShare(-1.96).toFixed(4) //=> '0.0250'
 */
export function normalShare(deviations: number): number {
  const x = Math.abs(deviations);
  const t = 1 / (1 + 0.2316419 * x);
  const sum = t * (B[0] + t * (B[1] + t * (B[2] + t * (B[3] + t * B[4]))));
  const above = (Math.exp((-x * x) / 2) / Math.sqrt(2 * Math.PI)) * sum;
  return deviations < 0 ? above : 1 - above;
}

const B = [0.31938153, -0.356563782, 1.781477937, -1.821255978, 1.330274429] as const;
