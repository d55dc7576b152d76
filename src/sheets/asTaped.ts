import { sawNearest, TICKS_PER_MM, type Ticks } from '../measure/index.ts';
import type { SheetContext } from './SheetContext.ts';

/**
 * A length that is found with a tape, as the tape can be read: in millimetres to halves, or to `step` ticks; inches stand on the
 * sixty-fourths on which they are printed.
 *
 * @example asTaped({ units: { system: 'mm', decimal: '.' } }, 271550) //=> 271520
 * @example asTaped({ units: { system: 'mm', decimal: '.' } }, 271550, 320) //=> 271680
 * @example asTaped({ units: { system: 'inches', decimal: '.' } }, 271550) //=> 271550
 */
export function asTaped(
  { units }: Pick<SheetContext, 'units'>,
  ticks: Ticks,
  step: Ticks = TICKS_PER_MM / 2,
): Ticks {
  return units.system === 'mm' ? sawNearest(ticks, step) : ticks;
}
