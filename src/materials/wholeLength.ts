import { type System, TICKS_PER_FOOT, TICKS_PER_MM } from '../measure/index.ts';
import { packages, rounded } from './rounded.ts';

/**
 * What is sold by length, up to the next foot where a job is told in inches, else to the next metre; in metres.
 *
 * @example
 * wholeLength(2.1, 'mm') //=> 3
 * wholeLength(2.1, 'inches') //=> 2.1336
 */
export function wholeLength(amount: number, system: System): number {
  const sold = system === 'inches' ? TICKS_PER_FOOT / (1000 * TICKS_PER_MM) : 1;
  return rounded(packages(amount / sold) * sold, 4);
}
