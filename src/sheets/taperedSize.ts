import type { Ticks } from '../measure/index.ts';
import type { SheetContext } from './SheetContext.ts';

/** A size as it is sawn: both ends where a cut is narrower at one of them, the wide end first, else the one size; the unit stands once. */
export function taperedSize({ say, length }: SheetContext, wide: Ticks, narrow: Ticks): string {
  const [one, other] = [length(wide), length(narrow)];
  if (one === other) return one;
  const unit = other.slice(other.lastIndexOf(' '));
  return say('size.tapered', { wide: one.endsWith(unit) ? one.slice(0, -unit.length) : one, narrow: other });
}
