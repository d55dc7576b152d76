import type { Ticks } from '../measure/index.ts';
import type { Fact } from './Fact.ts';

/** Number of tiles laid loose in a row, joints between them, to prove the measured size. */
export const CHECK_RUN: Fact<number> = { value: 10, mark: 'P', source: 'practice' };

/**
 * Length of a loose row of tiles with the joints between them, in ticks.
 *
 * @example
 * checkRun(96012, 1524) //=> 973836
 */
export function checkRun(side: Ticks, joint: Ticks, tiles: number = CHECK_RUN.value): Ticks {
  return tiles * side + (tiles - 1) * joint;
}
