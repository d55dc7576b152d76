import type { Ticks } from '../measure/index.ts';
import type { Fact } from './Fact.ts';

/**
 * From which share of its narrowest cut on a taper is seen, and below how much, in inches, nobody sees one at all; how many
 * times one counts at a wall that is looked at. A job may set the share and the weight otherwise.
 */
export const TAPER_SHOWS: Fact<{ ofCutShare: number; leastInches: number; focalWeight: number }> = {
  value: { ofCutShare: 0.1, leastInches: 1 / 16, focalWeight: 2 },
  mark: 'P',
  source: 'practice',
};

/**
 * A taper as share of the cut that carries it, 1 at most: what the eye sees of it. Both lengths in one unit.
 *
 * @example
 * taperShare(5, 140) //=> 0.03571428571428571
 * taperShare(5, 0) //=> 1
 */
export function taperShare(runsOff: Ticks, cut: Ticks): number {
  return runsOff === 0 ? 0 : Math.min(1, runsOff / Math.max(1, cut));
}
