import { type System, TICKS_PER_INCH, TICKS_PER_MM, type Ticks } from '../measure/index.ts';
import type { Fact } from './Fact.ts';
import { normalShare } from './normalShare.ts';

/** Spread of one reading of a tape at a mark, as a standard deviation: 1/32 in or 1 mm. */
export const READING_ERROR: Fact<Readonly<Record<System, Ticks>>> = {
  value: { inches: TICKS_PER_INCH / 32, mm: TICKS_PER_MM },
  mark: 'P',
  source: 'practice',
};

/**
 * What stands nearer to the end of a tape than this is not read there: the hook is in the way. A mark on the end itself is none that is
 * read. 1/4 in or 5 mm.
 */
export const LEAST_TAPED: Fact<Readonly<Record<System, Ticks>>> = {
  value: { inches: TICKS_PER_INCH / 4, mm: 5 * TICKS_PER_MM },
  mark: 'P',
  source: 'practice',
};

/** Of this share of all lines the stated error is not exceeded. */
export const lineShare = 0.95;

/** An error that spreads round `bias`, which is known, with a standard deviation; one unit for both. */
export interface Spread {
  readonly bias: number;
  readonly sd: number;
}

/**
 * Standard deviation of a mark made with a tape: its reading, and what rounding to a step adds where it is
 * not known, a uniform spread over the step. Geometry.
 *
 * @example Math.round(markSpread(254, 508)) //=> 293
 */
export function markSpread(reading: Ticks, step: Ticks): number {
  return Math.hypot(reading, step / Math.sqrt(12));
}

/**
 * By how much a line through two marks, `apart` from each other, leaves its direction over a length: standard
 * deviation in ticks, from that of each mark. Geometry.
 *
 * @example Math.round(turnSpread([293, 293], 1137920, 975360)) //=> 355
 */
export function turnSpread([one, other]: readonly [number, number], apart: Ticks, over: Ticks): number {
  return (Math.hypot(one, other) * over) / apart;
}

/**
 * By how much a line squared off another by a 3-4-5 leaves its direction over a length: standard deviation in
 * ticks where both legs and the diagonal are each read with `reading`. From c² = a² + b² − 2ab·cos γ. Geometry.
 *
 * @example Math.round(squareSpread([292608, 390144], 254, 975360)) //=> 1497
 */
export function squareSpread([a, b]: readonly [Ticks, Ticks], reading: number, over: Ticks): number {
  const diagonal = Math.hypot(a, b);
  return (Math.hypot(diagonal, a, b) * reading * over) / (a * b);
}

/**
 * The bound that all of some independent errors keep at once in a share of cases, by halving; in their unit.
 *
 * @example Math.round(boundOf([{ bias: 0, sd: 1000 }])) //=> 1960
 * @example Math.round(boundOf([{ bias: 0, sd: 1000 }, { bias: 0, sd: 1000 }])) //=> 2236
 */
export function boundOf(errors: readonly Spread[], share: number = lineShare): number {
  const kept = (bound: number) =>
    errors.reduce(
      (all, { bias, sd }) => all * (normalShare((bound - bias) / sd) - normalShare((-bound - bias) / sd)),
      1,
    );
  let [low, high] = [0, Math.max(0, ...errors.map(({ bias, sd }) => Math.abs(bias) + 6 * sd))];
  for (let i = 0; i < 48; i++) {
    const middle = (low + high) / 2;
    [low, high] = kept(middle) < share ? [middle, high] : [low, middle];
  }
  return high;
}
