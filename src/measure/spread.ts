import type { Ticks } from './Ticks.ts';

/**
 * The largest reading less the smallest; 0 where there are none.
 *
 * @example spread([96012, 95885, 96266]) //=> 381
 */
export function spread(readings: readonly Ticks[]): Ticks {
  return readings.length === 0 ? 0 : Math.max(...readings) - Math.min(...readings);
}
