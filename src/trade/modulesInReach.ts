import { type System, TICKS_PER_INCH, TICKS_PER_MM, type Ticks } from '../measure/index.ts';
import type { Fact } from './Fact.ts';

/** How far apart chalk lines may lie so that a setter still reaches across: 4 ft or 1200 mm. */
export const REACH: Fact<Readonly<Record<System, Ticks>>> = {
  value: { inches: 48 * TICKS_PER_INCH, mm: 1200 * TICKS_PER_MM },
  mark: 'P',
  source: 'practice',
};

/**
 * Whole modules from one chalk line to the next: as many as a reach holds, at least one.
 *
 * @example modulesInReach(97536, 390144) //=> 4
 * @example modulesInReach(108712, 390144) //=> 3
 */
export function modulesInReach(module: Ticks, reach: Ticks): number {
  return Math.max(1, Math.floor(reach / module));
}
