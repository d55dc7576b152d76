import { TICKS_PER_MM } from './Ticks.ts';

const TICKS_PER_DM = 100 * TICKS_PER_MM;

/**
 * A volume in litres (cubic decimetres) from cubic ticks.
 *
 * @example litresOf(32000 ** 3) //=> 1
 */
export function litresOf(ticksCubed: number): number {
  return ticksCubed / TICKS_PER_DM ** 3;
}
