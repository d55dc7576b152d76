import type { Ticks } from './Ticks.ts';

/**
 * The mean of some readings, rounded once to a tick (a half goes up); NaN where there are none.
 *
 * @example mean([96012, 95885, 96012]) //=> 95970
 */
export function mean(readings: readonly Ticks[]): Ticks {
  return Math.round(readings.reduce((sum, reading) => sum + reading, 0) / readings.length);
}
