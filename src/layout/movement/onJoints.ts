import type { Point } from '../../geometry/index.ts';
import type { Pattern } from '../../pattern/Pattern.ts';
import { firstJoint } from '../chalk/firstJoint.ts';
import type { WideJoint } from './WideJoint.ts';

/** Wide joints, each moved to the nearest joint of a pattern that stands at `origin`; those that come to lie on one are one. */
export function onJoints(
  wide: readonly WideJoint[],
  pattern: Pick<Pattern, 'module' | 'tiles' | 'joint'>,
  origin: Point,
): readonly WideJoint[] {
  const moved = wide.map((one): WideJoint => {
    const first = firstJoint(one.axis, pattern, origin);
    const module = pattern.module[one.axis];
    return { ...one, at: first + Math.round((one.at - first) / module) * module };
  });
  return moved.filter(
    ({ axis, at }, i) => !moved.slice(0, i).some((one) => one.axis === axis && one.at === at),
  );
}
