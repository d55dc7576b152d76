import { printDecimal, TICKS_PER_FOOT, TICKS_PER_MM, type Ticks } from '../measure/index.ts';
import type { SheetContext } from './SheetContext.ts';

const TENTH = 100 * TICKS_PER_MM;

/**
 * The length of a straightedge as it is sold: one of 2 m is `2 m` on a sheet in inches too, one of 6 ft is `6 ft` on a sheet in
 * millimetres.
 *
 * @param longLength how the job prints a long length of its own units.
 */
export function straightedgeSaid(
  { longLength, units }: Pick<SheetContext, 'longLength' | 'units'>,
  over: Ticks,
): string {
  const isMetric = over % TENTH === 0;
  const isFeet = over % TICKS_PER_FOOT === 0;
  if (units.system === 'inches' && isMetric && !isFeet)
    return `${printDecimal(over / (10 * TENTH), 1, units.decimal)} m`;
  if (units.system === 'mm' && isFeet && !isMetric) return `${over / TICKS_PER_FOOT} ft`;
  return longLength(over);
}
