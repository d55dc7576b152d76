import type { Job } from '../../job/Job.ts';
import {
  bedDepth,
  CONTACT,
  contactShare,
  FLATNESS,
  flatnessClass,
  flatnessGap,
  type Limit,
  SOFT_JOINT_CARRIED,
  TROWELS,
  trowelFor,
} from '../../trade/index.ts';
import type { Laid } from '../laidSurfaces.ts';
import { limitOf, ON_SITE } from './limitOf.ts';

/** What is asked of the base under a surface and of the bed on it: flatness, contact, trowel. */
export function baseLimits(job: Job, { spec, tile }: Laid): readonly Limit[] {
  const longest = Math.max(tile.length, tile.width);
  const notch = job.products.mortar.notch;
  const wanted = trowelFor(longest);
  const deepEnough = bedDepth(notch) >= bedDepth(wanted);
  return [
    ...flatnessLimits(job, spec.name, longest),
    limitOf(CONTACT, {
      rule: 'contact',
      surface: spec.name,
      found: ON_SITE,
      limit: contactShare(spec.exposure),
      unit: 'share',
      pass: true,
    }),
    limitOf(TROWELS, {
      rule: 'trowel',
      surface: spec.name,
      found: Math.round(bedDepth(notch)),
      limit: Math.round(bedDepth(wanted)),
      unit: 'ticks',
      pass: deepEnough,
      advice: true,
      ...(deepEnough
        ? {}
        : {
            wouldPass: {
              code: `limit.trowel.${wanted.kind}`,
              figures: { notchWidth: wanted.width, notchDepth: wanted.depth, notchSpace: wanted.space },
            },
          }),
    }),
  ];
}

function flatnessLimits(job: Job, surface: string, longest: number): readonly Limit[] {
  const { gap, over, shortGap, shortOver, name } = flatnessClass(longest);
  const rule = `flatness.${name}`;
  if (job.base.flatness.length === 0)
    return [
      limitOf(FLATNESS, {
        rule,
        surface,
        found: ON_SITE,
        limit: gap,
        unit: 'ticks',
        pass: true,
        wouldPass: { code: 'limit.flatness.check', figures: { gap, over, shortGap, shortOver } },
      }),
    ];
  return job.base.flatness.map((reading) => {
    const most = flatnessGap(longest, reading.under);
    const pass = reading.gap <= most;
    return limitOf(FLATNESS, {
      rule,
      surface,
      found: reading.gap,
      limit: most,
      unit: 'ticks',
      pass,
      ...(reading.where === undefined ? {} : { at: [reading.where] }),
      ...(pass
        ? {}
        : { wouldPass: { code: 'limit.flatness.pass', figures: { gap: most, over: reading.under } } }),
    });
  });
}

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
