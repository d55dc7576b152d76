import type { Fact } from './Fact.ts';

/** Floor in square feet for which one straightedge check is the least. */
export const CHECK_AREA: Fact<number> = { value: 100, mark: 'M', source: 'ACI 117 §4.8' };

const SQ_FT_IN_M2 = 0.09290304;

/**
 * Straightedge checks that a floor needs at the least, and never less than one each way of the room.
 *
 * @example straightedgeChecks(5) //=> 2
 * @example straightedgeChecks(37.161216) //=> 4
 */
export function straightedgeChecks(areaM2: number): number {
  return Math.max(2, Math.ceil(areaM2 / (CHECK_AREA.value * SQ_FT_IN_M2) - 1e-9));
}
