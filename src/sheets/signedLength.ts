import type { Ticks } from '../measure/index.ts';

/**
 * A correction with its sign, rounded as its size is, so that it reads the same wherever it is told; one too small to print is `0`.
 *
 * @example signedLength(-508, (ticks) => `${ticks / 8128} in`) //=> '−0.0625 in'
 * @example signedLength(3, () => '0 in') //=> '0'
 */
export function signedLength(ticks: Ticks, length: (ticks: Ticks) => string): string {
  const said = length(Math.abs(ticks));
  if (said === length(0)) return '0';
  return ticks > 0 ? `+${said}` : `−${said}`;
}
