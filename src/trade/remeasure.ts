import type { System, Ticks } from '../measure/index.ts';
import type { Fact } from './Fact.ts';
import { inches, millimetres } from './inches.ts';

/** How far readings may miss each other before the room is measured again. */
export const REMEASURE: Fact<Readonly<Record<System, number>>> = {
  value: { inches: 1 / 4, mm: 6 },
  mark: 'P',
  source: 'practice',
};

/**
 * The miss from which a room is measured again, in ticks.
 *
 * @example
 * remeasureOver('inches') //=> 2032
 * remeasureOver('mm') //=> 1920
 */
export function remeasureOver(system: System): Ticks {
  return system === 'mm' ? millimetres(REMEASURE.value.mm) : inches(REMEASURE.value.inches);
}
