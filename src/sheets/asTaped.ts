import { type System, sawNearest, TICKS_PER_MM, type Ticks } from '../measure/index.ts';
import type { SheetContext } from './SheetContext.ts';

/** The marks that a tape has, in ticks: 1/16 in, and millimetres whose halves are seen. */
const MARKS: Readonly<Record<System, Ticks>> = { inches: 508, mm: TICKS_PER_MM / 2 };

/**
 * A length that is found with a tape, as the tape can be read: to the marks that it has, or to `step` ticks.
 *
 * @example asTaped({ units: { system: 'mm', decimal: '.' } }, 271550) //=> 271520
 * @example asTaped({ units: { system: 'mm', decimal: '.' } }, 271550, 320) //=> 271680
 * @example asTaped({ units: { system: 'inches', decimal: '.' } }, 271550) //=> 271780
 */
export function asTaped(
  { units }: Pick<SheetContext, 'units'>,
  ticks: Ticks,
  step: Ticks = MARKS[units.system],
): Ticks {
  return sawNearest(ticks, step);
}
