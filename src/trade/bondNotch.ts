import type { System } from '../measure/index.ts';
import type { Notch } from './bedDepth.ts';
import type { Fact } from './Fact.ts';
import { inches, millimetres } from './inches.ts';

/** Side of the square notches, and the space between them, of the trowel for mortar under a membrane or a board, as sold in each system. */
export const BOND_NOTCH: Fact<Readonly<Record<System, number>>> = {
  value: { inches: 1 / 4, mm: 6 },
  mark: 'P',
  source: 'practice',
};

/**
 * Trowel for the mortar under a membrane or a board, in ticks.
 *
 * @example
 * bondNotch('inches') //=> { kind: 'square', width: 2032, depth: 2032, space: 2032 }
 * bondNotch('mm').depth //=> 1920
 */
export function bondNotch(system: System): Notch {
  const side = system === 'mm' ? millimetres(BOND_NOTCH.value.mm) : inches(BOND_NOTCH.value.inches);
  return { kind: 'square', width: side, depth: side, space: side };
}
