import { type Notation, printLength, type Ticks } from '../measure/index.ts';

/** How the distance of a mark is printed: on the grid of `step`, if given. */
export interface SizePrint extends Notation {
  readonly step?: Ticks | undefined;
}

/**
 * The distance of a mark from its corner, as a tape is read.
 *
 * @example printSize(798576, { system: 'inches', step: 508 }) //=> '8 ft 2 1/4 in'
 */
export function printSize(distance: Ticks, { step, ...units }: SizePrint): string {
  return printLength(distance, units, { feet: true, ...(step ? { finest: step } : {}) });
}
