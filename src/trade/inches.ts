import { TICKS_PER_INCH, TICKS_PER_MM, type Ticks } from '../measure/index.ts';

/**
 * Ticks of a number of inches, to the nearest tick.
 *
 * @example
 * inches(3 / 16) //=> 1524
 */
export function inches(value: number): Ticks {
  return Math.round(value * TICKS_PER_INCH);
}

/**
 * Ticks of a number of feet, to the nearest tick.
 *
 * @example
 * feet(25) //=> 2438400
 */
export function feet(value: number): Ticks {
  return inches(value * 12);
}

/**
 * Ticks of a number of millimetres, to the nearest tick.
 *
 * @example
 * millimetres(2.5) //=> 800
 */
export function millimetres(value: number): Ticks {
  return Math.round(value * TICKS_PER_MM);
}
