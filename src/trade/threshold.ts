import type { Ticks } from '../measure/index.ts';
import type { Fact } from './Fact.ts';
import { inches } from './inches.ts';

/** Steepest ramp: so much run to its rise. */
export const RAMP: Fact<number> = { value: 12, mark: 'S', source: 'ADA Standards §405.2 (2010)' };

/** Change of level in inches: upright up to `upright`, bevelled up to `bevelled` with `runPerRise`, more is a ramp. */
export const LEVEL_CHANGE: Fact<{ upright: number; bevelled: number; runPerRise: number }> = {
  value: { upright: 1 / 4, bevelled: 1 / 2, runPerRise: 2 },
  mark: 'S',
  source: 'ADA Standards §303 (2010)',
};

export interface Threshold {
  readonly kind: 'flush' | 'upright' | 'bevel' | 'ramp';
  /** Height of the bevelled part, or of the ramp, and its least run, in ticks; 0 where there is none. */
  readonly rise: Ticks;
  readonly run: Ticks;
}

/**
 * What a difference between two floors asks for; the sign does not matter. Ticks.
 *
 * @example
 * threshold(3048) //=> { kind: 'bevel', rise: 1016, run: 2032 }
 * threshold(-5080) //=> { kind: 'ramp', rise: 5080, run: 60960 }
 */
export function threshold(difference: Ticks): Threshold {
  const { upright, bevelled, runPerRise } = LEVEL_CHANGE.value;
  const step = Math.abs(difference);
  if (step === 0) return { kind: 'flush', rise: 0, run: 0 };
  if (step <= inches(upright)) return { kind: 'upright', rise: 0, run: 0 };
  if (step > inches(bevelled)) return { kind: 'ramp', rise: step, run: step * RAMP.value };
  const rise = step - inches(upright);
  return { kind: 'bevel', rise, run: rise * runPerRise };
}
