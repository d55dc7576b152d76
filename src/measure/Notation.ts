import type { System } from './Ticks.ts';

/** The mark between the whole part of a number and its decimals. */
export type DecimalMark = '.' | ',';

/** How figures are written: in the units of a job, and with the decimal mark of a sheet's language. */
export interface Notation {
  readonly system: System;
  /** Default a point, as files for other programs have it. */
  readonly decimal?: DecimalMark | undefined;
}

/** A notation; of units alone, the one with a point. */
export const notationOf = (units: System | Notation): Notation =>
  typeof units === 'string' ? { system: units } : units;

/**
 * Digits with a point as a notation writes them.
 *
 * @example withMark('289.5', { system: 'mm', decimal: ',' }) //=> '289,5'
 * @example withMark('289.5', { system: 'mm' }) //=> '289.5'
 */
export const withMark = (digits: string, { decimal = '.' }: Notation): string => digits.replace('.', decimal);
