import type { Fact } from './Fact.ts';

/** Hours that a mix can be worked, shortest and longest. The bag rules. */
export const POT_LIFE: Fact<
  Readonly<Record<'mortar' | 'cementGrout' | 'epoxyGrout', readonly [number, number]>>
> = {
  value: { mortar: [1, 2], cementGrout: [1 / 3, 1 / 2], epoxyGrout: [3 / 4, 1] },
  mark: 'P',
  source: 'practice',
};

/** Mixing: turns a minute, and minutes to stand before it is mixed again without water. */
export const MIXING: Fact<{ rpm: readonly [number, number]; slakeMinutes: readonly [number, number] }> = {
  value: { rpm: [150, 300], slakeMinutes: [5, 10] },
  mark: 'P',
  source: 'practice',
};

/**
 * Largest batch that is used up within its pot life, in kg: square metres an hour, hours, kg per square metre.
 *
 * @example
 * batchMass(15, 1.5, 0.77).toFixed(1) //=> '17.3'
 */
export function batchMass(paceM2PerHour: number, potLifeHours: number, rateKgPerM2: number): number {
  return paceM2PerHour * potLifeHours * rateKgPerM2;
}
