import type { Ticks } from '../measure/index.ts';
import type { SheetContext } from './SheetContext.ts';

/** A size as it is sawn: both ends where a cut is narrower at one of them, the narrow end first, else the one size; the unit stands once. */
export function taperedSize({ say, length }: SheetContext, wide: Ticks, narrow: Ticks): string {
  const [least, most] = [length(narrow), length(wide)];
  if (least === most) return least;
  const unit = most.slice(most.lastIndexOf(' '));
  return say('size.tapered', {
    narrow: least.endsWith(unit) ? least.slice(0, -unit.length) : least,
    wide: most,
  });
}
