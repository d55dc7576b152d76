import { TICKS_PER_MM, type Ticks } from '../measure/index.ts';

/** The gap under a straightedge, and how long that is, in ticks. */
export interface FlatnessReading {
  readonly gap: Ticks;
  readonly under: Ticks;
}

/** A hollow that a straightedge just spans. */
export interface Dish {
  readonly areaM2: number;
  /** Depth on average over it, in ticks. */
  readonly mean: Ticks;
  readonly litres: number;
}

/**
 * A hollow of which one gap under a straightedge is known: round, as wide as the straightedge, deepest in the middle and shallower
 * with the square of the distance from there, so that it is half as deep on average. Geometry. `mostM2` is the floor that it may take.
 *
 * @example
 * dishOf({ gap: 640, under: 640000 }, 100).areaM2.toFixed(3) //=> '3.142'
 * dishOf({ gap: 640, under: 640000 }, 2).litres //=> 2
 */
export function dishOf({ gap, under }: FlatnessReading, mostM2: number): Dish {
  const across = under / TICKS_PER_MM / 1000;
  const areaM2 = Math.min((Math.PI / 4) * across ** 2, mostM2);
  const mean = gap / 2;
  // A millimetre over a square metre is a litre.
  return { areaM2, mean: Math.round(mean), litres: areaM2 * (mean / TICKS_PER_MM) };
}
