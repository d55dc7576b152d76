import type { System, Ticks } from '../measure/index.ts';
import type { Fact } from './Fact.ts';
import { inches, millimetres } from './inches.ts';

/** Patch over a base that was not read for hollows, in inches and in millimetres: how deep on average, with its holes and scars. */
export const SKIM: Fact<Readonly<Record<System, number>>> = {
  value: { inches: 1 / 32, mm: 1 },
  mark: 'P',
  source: 'practice',
};

/**
 * Depth of a skim in ticks, round in the units of the job.
 *
 * @example
 * skimDepth('inches') //=> 254
 * skimDepth('mm') //=> 320
 */
export function skimDepth(system: System): Ticks {
  return system === 'mm' ? millimetres(SKIM.value.mm) : inches(SKIM.value.inches);
}
