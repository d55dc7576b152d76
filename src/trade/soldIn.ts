import { type System, TICKS_PER_MM, type Ticks } from '../measure/index.ts';
import { inches } from './inches.ts';

/** Notches of trowels are sold in steps of half a millimetre or of 1/32 in; no size under 2 1/2 in is both. */
const STEPS: Readonly<Record<System, Ticks>> = { mm: TICKS_PER_MM / 2, inches: inches(1 / 32) };

/**
 * The units in which a notch of this size is sold, whatever else is printed in: a shop has no 25/64 in notch but one of 10 mm. What is
 * sold in neither is told in the units asked for.
 *
 * @example
 * soldIn(3200, 'inches') //=> 'mm'
 * soldIn(2032, 'mm') //=> 'inches'
 * soldIn(2033, 'mm') //=> 'mm'
 */
export function soldIn(size: Ticks, asked: System): System {
  if (size % STEPS[asked] === 0) return asked;
  const other = asked === 'mm' ? 'inches' : 'mm';
  return size % STEPS[other] === 0 ? other : asked;
}
