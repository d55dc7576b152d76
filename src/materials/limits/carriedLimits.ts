import type { Job } from '../../job/Job.ts';
import { type Limit, SOFT_JOINT_CARRIED } from '../../trade/index.ts';
import { limitOf, ON_SITE } from './limitOf.ts';

/** Joints of the base and cracks that move are carried up through the tile. */
export function carriedLimits(job: Job): readonly Limit[] {
  const walls = job.base.joints.map(({ wall }) => wall);
  const moving = job.base.cracks.filter((crack) => crack.moving).map(({ where }) => where);
  const at = [...walls, ...moving];
  if (at.length === 0) return [];
  return [
    limitOf(SOFT_JOINT_CARRIED, {
      rule: 'baseJoint',
      found: at.length,
      limit: ON_SITE,
      unit: 'count',
      pass: false,
      advice: true,
      at,
      wouldPass: { code: 'limit.baseJoint.pass', figures: { placeCount: at.length } },
    }),
  ];
}
