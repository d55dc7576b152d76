import type { Ticks } from '../measure/index.ts';
import type { Fact } from './Fact.ts';
import { inches } from './inches.ts';

/** Fall to a drain: rise in inches for each foot of run. */
export const FALL: Fact<number> = { value: 1 / 4, mark: 'S', source: 'plumbing codes' };

/** Sides from `from` inches cannot follow a cone to a point drain; mosaic has a face under `mosaicSquareInches`. */
export const CONE_TILE: Fact<{ from: number; mosaicSquareInches: number }> = {
  value: { from: 6, mosaicSquareInches: 9 },
  mark: 'S',
  source: 'TCNA Handbook',
};

/**
 * Least drop over a run to a drain, in ticks, rounded up.
 *
 * @example
 * fall(260096) //=> 5419
 */
export function fall(run: Ticks): Ticks {
  return Math.ceil((run * FALL.value) / 12);
}

/**
 * Whether a tile can follow the cone of a floor that falls to one point.
 *
 * @example
 * followsCone(97536) //=> false
 * followsCone(16256) //=> true
 */
export function followsCone(longestSide: Ticks): boolean {
  return longestSide < inches(CONE_TILE.value.from);
}
