import type { Ticks } from '../measure/index.ts';
import type { Fact } from './Fact.ts';
import { inches, millimetres } from './inches.ts';

/** Step allowed from tile to tile, in inches, for joints under and from `from` inches; the tile's own warpage comes on top. */
export const LIPPAGE: Fact<{ from: number; narrow: number; wide: number }> = {
  value: { from: 1 / 4, narrow: 1 / 32, wide: 1 / 16 },
  mark: 'S',
  source: 'ANSI A108.02 §4.3.7',
};

/** United Kingdom, new homes: step in millimetres for joints up to and over `upTo` millimetres, and least joints. */
export const LIPPAGE_UK: Fact<{
  upTo: number;
  narrow: number;
  wide: number;
  floorJoint: number;
  wallJoint: number;
}> = {
  value: { upTo: 6, narrow: 1, wide: 2, floorJoint: 3, wallJoint: 1.5 },
  mark: 'S',
  source: 'NHBC Standards 9.1.7 (2025)',
};

/**
 * Largest step between two tiles, in ticks.
 *
 * @example
 * lippageLimit(1016, 254) //=> 508
 * lippageLimit(2032, 254) //=> 762
 */
export function lippageLimit(joint: Ticks, warpage: Ticks): Ticks {
  const { from, narrow, wide } = LIPPAGE.value;
  return inches(joint < inches(from) ? narrow : wide) + warpage;
}

/**
 * Largest step between two tiles in a new home in the United Kingdom, in ticks.
 *
 * @example
 * lippageLimitUk(1920) //=> 320
 * lippageLimitUk(2560) //=> 640
 */
export function lippageLimitUk(joint: Ticks): Ticks {
  const { upTo, narrow, wide } = LIPPAGE_UK.value;
  return millimetres(joint <= millimetres(upTo) ? narrow : wide);
}
