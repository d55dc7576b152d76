import { type Notation, notationOf, withMark } from './Notation.ts';
import { M2_PER_SQ_FT } from './readArea.ts';
import type { System } from './Ticks.ts';

/**
 * An area as a sheet shows it: square feet to a tenth, square metres to a hundredth.
 *
 * @example printArea(5.04, 'mm') //=> '5.04 m²'
 * @example printArea(5.04, 'inches') //=> '54.3 sq ft'
 */
export function printArea(areaM2: number, units: System | Notation): string {
  const notation = notationOf(units);
  return notation.system === 'mm'
    ? `${withMark(areaM2.toFixed(2), notation)} m²`
    : `${withMark((areaM2 / M2_PER_SQ_FT).toFixed(1), notation)} sq ft`;
}
