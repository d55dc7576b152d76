import { sawNearest, TICKS_PER_INCH, TICKS_PER_MM, type Ticks } from '../measure/index.ts';
import type { SheetContext } from './SheetContext.ts';

/** How much is sawn in all: in feet and whole inches, or in metres to a tenth; nobody reads the wear of a blade closer. */
export function sawnLength({ longLength, number, units }: SheetContext, ticks: Ticks): string {
  return units.system === 'mm'
    ? `${number(ticks / (1000 * TICKS_PER_MM))} m`
    : longLength(sawNearest(ticks, TICKS_PER_INCH));
}
