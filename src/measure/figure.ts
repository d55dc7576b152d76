import { type Notation, notationOf, withMark } from './Notation.ts';
import { sawDown, sawNearest } from './saw.ts';
import { type System, TICKS_PER_64TH, TICKS_PER_INCH, TICKS_PER_MM, type Ticks } from './Ticks.ts';

/** A length taken apart for setting in large type: `7 5/8 in` is whole 7, numerator 5, denominator 8. */
export interface Figure {
  /** The whole number, with a leading − if negative; empty before a fraction under one. Millimetres keep their decimals here. */
  readonly whole: string;
  readonly numerator?: string;
  readonly denominator?: string;
  readonly unit: 'in' | 'mm';
}

/** How finely a length is printed: the grid in ticks, and which way to it. */
export interface Grid {
  readonly finest?: Ticks;
  readonly round?: 'nearest' | 'down';
}

/**
 * The parts of a length as printed, fraction reduced, on a grid of 1/64 in or 0.1 mm unless told
 * otherwise.
 *
 * @example figure(61976, 'inches') //=> {whole: '7', numerator: '5', denominator: '8', unit: 'in'}
 * @example figure(2540, 'inches') //=> {whole: '', numerator: '5', denominator: '16', unit: 'in'}
 * @example figure(92640, 'mm') //=> {whole: '289.5', unit: 'mm'}
 * @example figure(92640, { system: 'mm', decimal: ',' }) //=> {whole: '289,5', unit: 'mm'}
 */
export function figure(ticks: Ticks, units: System | Notation, grid: Grid = {}): Figure {
  const notation = notationOf(units);
  const shown = onGrid(ticks, notation.system, grid);
  return notation.system === 'mm' ? millimetres(shown, notation) : inches(shown);
}

/**
 * A length brought to the grid on which it is printed.
 *
 * @example onGrid(62000, 'inches', {}) //=> 61976
 * @example onGrid(92650, 'mm', {finest: 320, round: 'down'}) //=> 92480
 */
export function onGrid(ticks: Ticks, system: System, grid: Grid): Ticks {
  const finest = grid.finest ?? (system === 'mm' ? TICKS_PER_MM / 10 : TICKS_PER_64TH);
  return grid.round === 'down' ? sawDown(ticks, finest) : sawNearest(ticks, finest);
}

function millimetres(ticks: Ticks, notation: Notation): Figure {
  // A tick is 0.003125 mm, so six decimals hold any length; the zeros behind are cut off.
  const digits = (Math.abs(ticks) / TICKS_PER_MM).toFixed(6).replace(/\.?0+$/, '');
  return { whole: (ticks < 0 ? '−' : '') + withMark(digits, notation), unit: 'mm' };
}

function inches(ticks: Ticks): Figure {
  const size = Math.abs(ticks);
  const whole = Math.floor(size / TICKS_PER_INCH);
  const rest = size - whole * TICKS_PER_INCH;
  const sign = ticks < 0 ? '−' : '';
  if (rest === 0) return { whole: `${sign}${whole}`, unit: 'in' };
  const common = divisor(rest, TICKS_PER_INCH);
  return {
    whole: sign + (whole === 0 ? '' : whole),
    numerator: String(rest / common),
    denominator: String(TICKS_PER_INCH / common),
    unit: 'in',
  };
}

function divisor(a: number, b: number): number {
  return b === 0 ? a : divisor(b, a % b);
}
