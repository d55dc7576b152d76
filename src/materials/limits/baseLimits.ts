import type { Job } from '../../job/Job.ts';
import { bedDepth, CONTACT, contactShare, type Limit, TROWELS, trowelFor } from '../../trade/index.ts';
import type { Laid } from '../laidSurfaces.ts';
import { flatnessLimits } from './flatnessLimits.ts';
import { limitOf, ON_SITE } from './limitOf.ts';

/** What is asked of the base under a surface and of the bed on it: flatness, contact, trowel. */
export function baseLimits(job: Job, { spec, tiles }: Laid): readonly Limit[] {
  const longest = Math.max(...tiles.flatMap(({ length, width }) => [length, width]));
  const notch = job.products.mortar.notch;
  const wanted = trowelFor(longest, job.print.system);
  const deepEnough = bedDepth(notch) >= bedDepth(wanted);
  return [
    ...flatnessLimits(job, spec.name, longest),
    limitOf(CONTACT, {
      rule: 'contact',
      bound: 'least',
      surface: spec.name,
      found: ON_SITE,
      limit: contactShare(spec.exposure),
      unit: 'share',
      pass: true,
    }),
    limitOf(TROWELS, {
      rule: 'trowel',
      bound: 'least',
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
