import { TICKS_PER_MM } from './Ticks.ts';

const TICKS_PER_M = 1000 * TICKS_PER_MM;

/**
 * An area in square metres from square ticks.
 *
 * @example areaM2Of(97536 * 97536) //=> 0.09290304
 */
export function areaM2Of(ticksSquared: number): number {
  return ticksSquared / TICKS_PER_M ** 2;
}
