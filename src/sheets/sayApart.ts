import { printDecimal, TICKS_PER_INCH, TICKS_PER_MM, type Ticks } from '../measure/index.ts';
import { figureKind } from '../trade/index.ts';
import type { SheetContext } from './SheetContext.ts';
import { sayFigures } from './sayFigures.ts';

type Printing = Parameters<typeof sayFigures>[0];

/** Decimals of a millimetre and of an inch that are finer than what a sheet prints, and those that tell any two ticks apart. */
const FINER = { mm: 2, inches: 3 } as const;
const FINEST = 5;

/**
 * Figures of a code in print, as `sayFigures` has them; but two lengths that differ and would print alike are told with as many
 * decimals as it takes to see which is the larger. For sentences that hold one length against another.
 */
export function sayApart(
  context: Printing,
  figures: Readonly<Record<string, number | string>>,
): Record<string, string | number> {
  const said = sayFigures(context, figures);
  const lengths = Object.entries(figures).filter(
    (one): one is [string, Ticks] => typeof one[1] === 'number' && figureKind(one[0], one[1]) === 'length',
  );
  const alike = lengths.filter(([key, ticks]) =>
    lengths.some(([other, value]) => value !== ticks && said[other] === said[key]),
  );
  const apart = lengthsApart(
    context,
    alike.map(([, ticks]) => ticks),
  );
  return { ...said, ...Object.fromEntries(alike.map(([key], i) => [key, apart[i]!])) };
}

/**
 * Lengths as decimals of their unit, with as few as tell those apart that differ.
 *
 * @example lengthsApart({ units: { system: 'mm', decimal: '.' } }, [640, 650]) //=> ['2 mm', '2.03 mm']
 */
export function lengthsApart({ units }: Pick<SheetContext, 'units'>, lengths: readonly Ticks[]): string[] {
  const { system, decimal } = units;
  const [unit, name] = system === 'mm' ? [TICKS_PER_MM, 'mm'] : [TICKS_PER_INCH, 'in'];
  for (let digits: number = FINER[system]; ; digits++) {
    const told = lengths.map((ticks) => `${printDecimal(ticks / unit, digits, decimal)} ${name}`);
    if (digits >= FINEST || new Set(told).size === new Set(lengths).size) return told;
  }
}
