import { drawnTogether } from './drawnTogether.ts';
import type { MovementLine } from './Movement.ts';
import type { WideJoint } from './WideJoint.ts';

/**
 * The soft joints that are wider than the joint of their pattern, in rising order, placed in the pattern as it repeats.
 *
 * @example wideJointsOf([{ axis: 'along', at: 540, width: 90 }, { axis: 'along', at: 1120, width: 90 }], 10) //=> [{ axis: 0, at: 500, extra: 80 }, { axis: 0, at: 1000, extra: 80 }]
 */
export function wideJointsOf(
  lines: readonly Pick<MovementLine, 'axis' | 'at' | 'width'>[],
  joint: number,
): readonly WideJoint[] {
  const wide: WideJoint[] = [];
  for (const line of [...lines].sort((a, b) => a.at - b.at)) {
    const axis = line.axis === 'along' ? 0 : 1;
    const extra = line.width - joint;
    if (extra > 0) wide.push({ axis, at: drawnTogether(wide, axis, line.at) - Math.floor(extra / 2), extra });
  }
  return wide;
}
