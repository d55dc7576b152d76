import { TICKS_PER_MM, type Ticks } from '../measure/index.ts';
import type { SheetContext } from './SheetContext.ts';

/** How much is sawn in all: in feet and inches, or in metres to a tenth, which is what a blade's wear is told in. */
export function sawnLength({ longLength, number, units }: SheetContext, ticks: Ticks): string {
  return units.system === 'mm' ? `${number(ticks / (1000 * TICKS_PER_MM))} m` : longLength(ticks);
}
