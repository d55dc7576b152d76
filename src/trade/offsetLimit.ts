import type { Ticks } from '../measure/index.ts';
import type { Fact } from './Fact.ts';
import { inches } from './inches.ts';

/** Offset of a side longer than `over` inches: at most one part in `parts` without an approved mock-up. Older texts say over 18. */
export const OFFSET_LIMIT: Fact<{ over: number; parts: number }> = {
  value: { over: 15, parts: 3 },
  mark: 'S',
  source: 'ANSI A108.02 §4.3.8.2',
};

/**
 * Whether an offset is within the limit. `shift` is the offset and `repeat` the length it is a part of, in the same
 * unit; a shift of two thirds is one third the other way. `over` is the side from which the rule holds, in ticks.
 *
 * @example
 * offsetAllowed(195072, 1, 2) //=> false
 * offsetAllowed(195072, 2, 3) //=> true
 * offsetAllowed(97536, 1, 2) //=> true
 */
export function offsetAllowed(
  longestSide: Ticks,
  shift: number,
  repeat: number,
  over: Ticks = inches(OFFSET_LIMIT.value.over),
): boolean {
  return longestSide <= over || OFFSET_LIMIT.value.parts * shorterWay(shift, repeat) <= repeat;
}

/**
 * An offset as a share of its repeat, measured the shorter way, 0 to 0.5.
 *
 * @example
 * offsetShare(3, 4) //=> 0.25
 */
export function offsetShare(shift: number, repeat: number): number {
  return shorterWay(shift, repeat) / repeat;
}

function shorterWay(shift: number, repeat: number): number {
  const once = ((shift % repeat) + repeat) % repeat;
  return Math.min(once, repeat - once);
}
