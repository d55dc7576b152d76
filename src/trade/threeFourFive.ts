import type { Ticks } from '../measure/index.ts';
import type { Fact } from './Fact.ts';

/** A triangle with sides 3, 4 and 5 has a square corner; the larger it is, the truer. */
export const THREE_FOUR_FIVE: Fact<readonly [number, number, number]> = {
  value: [3, 4, 5],
  mark: 'P',
  source: 'practice',
};

export interface SquareCheck {
  readonly legs: readonly [Ticks, Ticks];
  readonly diagonal: Ticks;
}

/**
 * Largest 3-4-5 triangle, a whole multiple of `unit`, whose legs fit within the two lengths, either leg the longer.
 * Legs stand in the order of the lengths given. Undefined where not even one unit fits. All in ticks.
 *
 * @example
 * threeFourFive(320000, 400000, 32000) //=> { legs: [288000, 384000], diagonal: 480000 }
 */
export function threeFourFive(first: Ticks, second: Ticks, unit: Ticks): SquareCheck | undefined {
  const [three, four, five] = THREE_FOUR_FIVE.value;
  const times = (a: number, b: number) => Math.floor(Math.min(first / (a * unit), second / (b * unit)));
  const [low, high] = [times(three, four), times(four, three)];
  const most = Math.max(low, high) * unit;
  if (most <= 0) return undefined;
  const legs = low >= high ? ([three * most, four * most] as const) : ([four * most, three * most] as const);
  return { legs, diagonal: five * most };
}
