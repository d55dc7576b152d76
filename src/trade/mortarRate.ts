import type { Ticks } from '../measure/index.ts';
import type { Notch } from './bedDepth.ts';
import { bagCoverage, bedMass, MORTAR_WASTE, notchMass } from './mortarCoverage.ts';

/** What is known of a mortar: its bag in kg, what the bag's own sheet says it covers in square metres, its trowel. */
export interface MortarUse {
  readonly notch: Notch;
  readonly bagKg: number;
  readonly coversM2?: readonly [number, number];
  readonly backButter: boolean;
  /** Bed that is ordered where it is another than the trowel leaves as it is usually held; the deeper counts. */
  readonly bed?: Ticks;
}

/** Powder for a square metre in kg, nothing bought beyond it: by the bag, by the notch or the deeper bed that is ordered, and the larger, which rules. */
export interface MortarRate {
  readonly byBag: number;
  readonly byNotch: number;
  readonly rules: 'bag' | 'notch' | 'bed';
  readonly kgPerM2: number;
  /** What a bag covers, in square metres, before back-buttering takes its part. */
  readonly coverM2: number;
}

/**
 * The one rate by which a floor's mortar is bought and shared out over its zones. A range on the bag counts at its low end, since
 * that is what a floor out of true takes; without one our table for the notch. The larger of bag and notch rules, and of notch and ordered bed the deeper.
 *
 * @example
 * mortarRate({ notch: { kind: 'square', width: 2032, depth: 3048, space: 2032 }, bagKg: 20, backButter: false }).rules //=> 'notch'
 * mortarRate({ notch: { kind: 'square', width: 2032, depth: 3048, space: 2032 }, bagKg: 20, backButter: false, bed: 1280 }).rules //=> 'bed'
 */
export function mortarRate({ notch, bagKg, coversM2, backButter, bed = 0 }: MortarUse): MortarRate {
  const coverM2 = coversM2?.[0] ?? bagCoverage(notch, bagKg);
  // What goes on the backs of the tiles comes beyond what the trowel leaves on the floor.
  const kept = backButter ? MORTAR_WASTE.value.backButter : 1;
  const byBag = bagKg / (coverM2 * kept);
  const byNotch = Math.max(notchMass(notch), bedMass(bed)) / kept;
  const rules = byBag >= byNotch ? 'bag' : bedMass(bed) > notchMass(notch) ? 'bed' : 'notch';
  return { byBag, byNotch, rules, kgPerM2: Math.max(byBag, byNotch), coverM2 };
}
