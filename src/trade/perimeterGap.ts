import type { System, Ticks } from '../measure/index.ts';
import type { Fact } from './Fact.ts';
import { inches, millimetres } from './inches.ts';

/** Gap wherever tile meets what restrains it: wanted, and never under. Printed in inches with round millimetres. */
export const PERIMETER_GAP: Fact<Readonly<Record<System, { wanted: number; least: number }>>> = {
  value: { inches: { wanted: 1 / 4, least: 1 / 8 }, mm: { wanted: 6, least: 3 } },
  mark: 'S',
  source: 'ANSI A108.02 §4.4, TCNA EJ171',
};

/**
 * Wanted and least gap at the edge of a field, in ticks, in the round figures of the system.
 *
 * @example
 * perimeterGap('inches') //=> { wanted: 2032, least: 1016 }
 * perimeterGap('mm') //=> { wanted: 1920, least: 960 }
 */
export function perimeterGap(system: System): { readonly wanted: Ticks; readonly least: Ticks } {
  const { wanted, least } = PERIMETER_GAP.value[system];
  const ticks = system === 'mm' ? millimetres : inches;
  return { wanted: ticks(wanted), least: ticks(least) };
}

/**
 * Width of the soft joint at a change of plane, in ticks: as the grout joint, but never under the least gap.
 *
 * @example
 * cornerJoint(508) //=> 1016
 * cornerJoint(1524) //=> 1524
 */
export function cornerJoint(grout: Ticks): Ticks {
  return Math.max(grout, perimeterGap('inches').least);
}
