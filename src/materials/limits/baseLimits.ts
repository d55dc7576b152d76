import type { Job } from '../../job/Job.ts';
import { onGrid } from '../../measure/index.ts';
import {
  bedDepth,
  CONTACT,
  contactShare,
  type Limit,
  type Notch,
  soldIn,
  TROWEL_ANGLE,
  TROWELS,
  trowelFor,
} from '../../trade/index.ts';
import type { Laid } from '../laidSurfaces.ts';
import { statedBed } from '../statedBed.ts';
import { flatnessLimits } from './flatnessLimits.ts';
import { limitOf, ON_SITE } from './limitOf.ts';

/** What is asked of the base under a surface and of the bed on it: flatness, contact, trowel. */
export function baseLimits(job: Job, { spec, tiles }: Laid): readonly Limit[] {
  const longest = Math.max(...tiles.flatMap(({ length, width }) => [length, width]));
  const notch = job.products.mortar.notch;
  // A trowel is held against the one that is sold in the same units: printed in others it is the same trowel.
  const wanted = trowelFor(longest, soldIn(notch.width, job.print.system));
  // What is advised is looked for in a shop, so it has the units of the sheet.
  const advised = trowelFor(longest, job.print.system);
  const [bed, least, sold] = [notch, wanted, advised].map(bedOf) as [number, number, number];
  // Sold in other units, or with a bed that the heights count deeper, what is advised may leave less than is asked for.
  const asked = Math.max(least, statedBed(job) ?? 0);
  const printed = (ticks: number) => onGrid(ticks, job.print.system, {});
  const deepEnough = bed >= least;
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
      found: Math.round(bed),
      limit: Math.round(least),
      unit: 'ticks',
      pass: deepEnough,
      advice: true,
      ...(deepEnough
        ? {}
        : {
            wouldPass: {
              code: `limit.trowel.${advised.kind}`,
              figures: {
                ownKind: notch.kind,
                ownNotchWidth: notch.width,
                ownNotchDepth: notch.depth,
                notchWidth: advised.width,
                notchDepth: advised.depth,
                notchSpace: advised.space,
                short: printed(sold) < printed(asked) ? 'yes' : 'no',
                advisedBed: Math.round(sold),
                asked: Math.round(asked),
              },
            },
          }),
    }),
  ];
}

/** The bed as mortar is counted: of a trowel held as it is on the floor. */
function bedOf(notch: Notch): number {
  return bedDepth(notch, TROWEL_ANGLE.value);
}
