import type { Ticks } from '../measure/index.ts';
import type { Fact } from './Fact.ts';
import { feet, inches } from './inches.ts';

interface FlatnessRow {
  readonly gap: number;
  readonly overFeet: number;
  readonly shortGap: number;
  readonly shortOver: number;
}

/** Flatness by the tile's longest side: tight from `tightFrom` inches. Gaps and short spans in inches. */
export const FLATNESS: Fact<{ tightFrom: number; ordinary: FlatnessRow; tight: FlatnessRow }> = {
  value: {
    tightFrom: 15,
    ordinary: { gap: 1 / 4, overFeet: 10, shortGap: 1 / 16, shortOver: 12 },
    tight: { gap: 1 / 8, overFeet: 10, shortGap: 1 / 16, shortOver: 24 },
  },
  mark: 'S',
  source: 'ANSI A108.01',
};

export interface FlatnessClass {
  readonly name: 'ordinary' | 'tight';
  readonly gap: Ticks;
  readonly over: Ticks;
  readonly shortGap: Ticks;
  readonly shortOver: Ticks;
}

/**
 * How flat the base must be for a tile, all in ticks.
 *
 * @example
 * flatnessClass(121920).name //=> 'tight'
 * flatnessClass(121839).name //=> 'ordinary'
 */
export function flatnessClass(longestSide: Ticks): FlatnessClass {
  const name = longestSide >= inches(FLATNESS.value.tightFrom) ? 'tight' : 'ordinary';
  const row = FLATNESS.value[name];
  return {
    name,
    gap: inches(row.gap),
    over: feet(row.overFeet),
    shortGap: inches(row.shortGap),
    shortOver: inches(row.shortOver),
  };
}

/**
 * Largest gap under a straightedge of a given length, in ticks. Between the two spans of the rule the gap grows in
 * line with the length, which is the stricter reading; it is never under the gap of the short span.
 *
 * @example
 * flatnessGap(97536, 975360) //=> 2032
 * flatnessGap(97536, 97536) //=> 508
 */
export function flatnessGap(longestSide: Ticks, straightedge: Ticks): Ticks {
  const { gap, over, shortGap, shortOver } = flatnessClass(longestSide);
  if (straightedge <= shortOver) return shortGap;
  return Math.max(shortGap, Math.round((gap * Math.min(straightedge, over)) / over));
}
