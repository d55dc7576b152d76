import { type Figure, figure, type Grid, onGrid } from './figure.ts';
import { type Notation, notationOf } from './Notation.ts';
import { type System, TICKS_PER_FOOT, TICKS_PER_INCH, type Ticks } from './Ticks.ts';

/** How a length is printed; the grid is 1/64 in or 0.1 mm, to the nearest, unless told otherwise. */
export interface LengthStyle extends Grid {
  /** Feet and inches from one foot up; default inches only. Without units there are no feet. */
  readonly feet?: boolean;
  /** Whether the unit is written; default true. */
  readonly unit?: boolean;
}

/**
 * A length as a sheet shows it: fractions reduced, a true minus sign, no zeros behind a decimal point.
 *
 * @example printLength(61976, 'inches') //=> '7 5/8 in'
 * @example printLength(798576, 'inches', {feet: true}) //=> '8 ft 2 1/4 in'
 * @example printLength(782320, 'inches', {feet: true}) //=> '8 ft 0 1/4 in'
 * @example printLength(92640, 'mm') //=> '289.5 mm'
 * @example printLength(92640, { system: 'mm', decimal: ',' }) //=> '289,5 mm'
 * @example printLength(-508, 'inches', {unit: false}) //=> '−1/16'
 * @example printLength(62000, 'inches', {finest: 508, round: 'down'}) //=> '7 5/8 in'
 */
export function printLength(ticks: Ticks, units: System | Notation, style: LengthStyle = {}): string {
  const { system } = notationOf(units);
  const shown = onGrid(ticks, system, style);
  const unit = style.unit ?? true;
  if (style.feet && unit && system === 'inches' && Math.abs(shown) >= TICKS_PER_FOOT)
    return feetAndInches(shown);
  const parts = figure(shown, units, { finest: 1 });
  return unit ? `${digits(parts)} ${parts.unit}` : digits(parts);
}

function feetAndInches(ticks: Ticks): string {
  const size = Math.abs(ticks);
  const feet = Math.floor(size / TICKS_PER_FOOT);
  const rest = size - feet * TICKS_PER_FOOT;
  // A fraction right after the feet could be read as a part of a foot.
  const none = rest < TICKS_PER_INCH ? '0 ' : '';
  const inches = rest === 0 ? '' : ` ${none}${digits(figure(rest, 'inches', { finest: 1 }))} in`;
  return `${ticks < 0 ? '−' : ''}${feet} ft${inches}`;
}

function digits({ whole, numerator, denominator }: Figure): string {
  if (numerator === undefined) return whole;
  const gap = whole === '' || whole === '−' ? '' : ' ';
  return `${whole}${gap}${numerator}/${denominator}`;
}
