import type { Ticks } from '../../measure/index.ts';
import type { WideJoint } from './WideJoint.ts';

/**
 * Where a place on the floor lies in the pattern as it repeats: the other way round from `pulledApart`. What lies in the extra of a
 * wide joint is in its middle. All in ticks; `wide` in rising order.
 *
 * @example drawnTogether([{ axis: 0, at: 500, extra: 80 }], 0, 400) //=> 400
 * @example drawnTogether([{ axis: 0, at: 500, extra: 80 }], 0, 540) //=> 500
 * @example drawnTogether([{ axis: 0, at: 500, extra: 80 }], 0, 680) //=> 600
 */
export function drawnTogether(wide: readonly WideJoint[], axis: 0 | 1, place: Ticks): Ticks {
  let at = place;
  for (const one of wide) {
    if (one.axis !== axis || one.at >= at) continue;
    at = Math.max(one.at, at - one.extra);
  }
  return at;
}
