import type { System, Ticks } from '../measure/index.ts';
import type { Fact } from './Fact.ts';
import { inches, millimetres } from './inches.ts';

/** What an opening has to spare over an appliance for a bed and a tape that are not exact, in inches with round millimetres. */
export const TIGHT_FIT: Fact<Readonly<Record<System, number>>> = {
  value: { inches: 1 / 8, mm: 3 },
  mark: 'P',
  source: 'practice',
};

/**
 * Under how much to spare an opening is tight, in ticks.
 *
 * @example
 * tightUnder('inches') //=> 1016
 * tightUnder('mm') //=> 960
 */
export function tightUnder(system: System): Ticks {
  return system === 'mm' ? millimetres(TIGHT_FIT.value.mm) : inches(TIGHT_FIT.value.inches);
}
