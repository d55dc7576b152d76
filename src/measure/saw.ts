import type { System, Ticks } from './Ticks.ts';

/** The step to which sizes are marked and sawn: 1/16 in is 508 ticks, 1/32 in 254, 1 mm 320, 0.5 mm 160. */
export interface SawStep {
  readonly ticks: Ticks;
  readonly system: System;
}

/**
 * The largest multiple of `step` that is not over `ticks`: for what is kept.
 *
 * @example sawDown(62000, 508) //=> 61976
 * @example sawDown(61976, 508) //=> 61976
 */
export function sawDown(ticks: Ticks, step: Ticks): Ticks {
  return ticks - (((ticks % step) + step) % step);
}

/**
 * The smallest multiple of `step` that is not under `ticks`: for notches and holes.
 *
 * @example sawUp(62000, 508) //=> 62484
 */
export function sawUp(ticks: Ticks, step: Ticks): Ticks {
  return 0 - sawDown(-ticks, step);
}

/**
 * The nearest multiple of `step`, a half going up: for centres and chalk marks.
 *
 * @example sawNearest(62000, 508) //=> 61976
 * @example sawNearest(254, 508) //=> 508
 */
export function sawNearest(ticks: Ticks, step: Ticks): Ticks {
  return sawDown(2 * ticks + step, 2 * step) / 2;
}
