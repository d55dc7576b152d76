import { onGrid, printLength, TICKS_PER_64TH, TICKS_PER_MM, type Ticks } from '../measure/index.ts';
import type { SheetContext } from './SheetContext.ts';
import { lengthsApart } from './sayApart.ts';
import { LONG } from './sayFigures.ts';

/** A length that was found and the one it is held against, which is a most or a least, and the result. */
export interface Held {
  readonly found: Ticks;
  readonly limit: Ticks;
  readonly bound: 'most' | 'least';
  readonly pass: boolean;
}

/** What a length is printed on where the limit is told the stricter way. */
const FINEST = { inches: TICKS_PER_64TH, mm: TICKS_PER_MM / 10 } as const;

/**
 * A found length and its limit in print, in the fractions that a tape has wherever the reader then sees the result that is told:
 * both to the nearest; else the limit the stricter way, so that whoever keeps it as printed keeps it; else in as many decimals as
 * it takes.
 */
export function heldAgainst(
  context: Pick<SheetContext, 'units'>,
  { found, limit, bound, pass }: Held,
): { readonly found: string; readonly limit: string } {
  const { units } = context;
  const shown = (ticks: Ticks) => onGrid(ticks, units.system, {});
  // Both in one form: feet beside inches are not compared at a glance.
  const feet = Math.max(Math.abs(found), Math.abs(limit)) >= LONG;
  const print = (ticks: Ticks) => printLength(ticks, units, { feet });
  const step = FINEST[units.system];
  const strict = (bound === 'most' ? Math.floor(limit / step) : Math.ceil(limit / step)) * step;
  for (const told of [shown(limit), strict]) {
    const passes = bound === 'most' ? shown(found) <= told : shown(found) >= told;
    if (passes === pass) return { found: print(found), limit: print(told) };
  }
  const [one, other] = lengthsApart(context, [found, limit]);
  return { found: one!, limit: other! };
}
