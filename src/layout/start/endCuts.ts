import type { Ticks } from '../../measure/index.ts';
import type { Stretch } from './balanced.ts';

/**
 * The cuts at the low and the high end of a stretch where a tile's lower edge stands at `position`: a whole
 * tile where the stretch ends in a joint or on a tile's edge. All in ticks.
 *
 * @example endCuts({ low: 0, high: 1000, size: 300, joint: 10 }, 350) //=> [30, 30]
 * @example endCuts({ low: 0, high: 1000, size: 300, joint: 10 }, 505) //=> [185, 185]
 */
export function endCuts({ low, high, size, joint }: Stretch, position: Ticks): readonly [Ticks, Ticks] {
  const module = size + joint;
  const wrap = (value: number) => ((value % module) + module) % module;
  const inLow = wrap(low - position);
  const inHigh = wrap(high - position);
  return [inLow < size ? size - inLow : size, inHigh > 0 && inHigh < size ? inHigh : size];
}
