import type { Ticks } from '../../measure/index.ts';
import type { WideJoint } from './WideJoint.ts';

/**
 * Where a place of the pattern as it repeats lies on the floor, once its wide joints are pulled apart: what lies beyond one is
 * moved up by its extra, and the middle of one by half of that. All in ticks.
 *
 * @example pulledApart([{ axis: 0, at: 500, extra: 80 }], 0, 400) //=> 400
 * @example pulledApart([{ axis: 0, at: 500, extra: 80 }], 0, 500) //=> 540
 * @example pulledApart([{ axis: 0, at: 500, extra: 80 }], 0, 600) //=> 680
 * @example pulledApart([{ axis: 0, at: 500, extra: 80 }], 1, 600) //=> 600
 */
export function pulledApart(wide: readonly WideJoint[], axis: 0 | 1, at: Ticks): Ticks {
  return wide.reduce((place, one) => {
    if (one.axis !== axis || one.at > at) return place;
    return place + (one.at === at ? Math.floor(one.extra / 2) : one.extra);
  }, at);
}
