import { sawDown } from './saw.ts';
import type { Ticks } from './Ticks.ts';

/**
 * A size as it is printed, with the share of its tile that goes beside it: that of the printed size, so that whoever divides one figure by
 * the other finds it. A whole tile is told as it measures.
 *
 * @param exact the size as calculated, and `of` its tile the same way, in ticks; `step` the saw step.
 * @returns `saw` in ticks and `percent` of the tile, to a whole number.
 * @example sawShare(54000, 96012, 508) //=> { saw: 53848, percent: 56 }
 * @example sawShare(96012, 96012, 508) //=> { saw: 96012, percent: 100 }
 */
export function sawShare(
  exact: Ticks,
  of: Ticks,
  step: Ticks,
): { readonly saw: Ticks; readonly percent: number } {
  const saw = exact >= of ? exact : sawDown(exact, step);
  return { saw, percent: Math.round((100 * saw) / of) };
}
