import type { Job } from '../../job/Job.ts';
import { onGrid } from '../../measure/index.ts';
import { bedDepth, CONTACT, contactShare, type Limit, TROWELS } from '../../trade/index.ts';
import type { Laid } from '../laidSurfaces.ts';
import { statedBed } from '../statedBed.ts';
import { type TrowelAsked, trowelAsked } from '../trowelAsked.ts';
import { flatnessLimits } from './flatnessLimits.ts';
import { limitOf, ON_SITE } from './limitOf.ts';

/** What is asked of the base under a surface and of the bed on it: flatness, contact, trowel. */
export function baseLimits(job: Job, laid: Laid): readonly Limit[] {
  const { spec } = laid;
  const asked = trowelAsked(job, laid);
  return [
    ...flatnessLimits(job, spec.name, asked.longest),
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
      found: Math.round(asked.bed),
      limit: Math.round(asked.least),
      unit: 'ticks',
      pass: asked.pass,
      advice: true,
      ...(asked.pass ? {} : { wouldPass: advice(job, asked) }),
    }),
  ];
}

/** The order in which trowels are tried: the job's, and the one that is advised where that does not fill. */
function advice(job: Job, { least, advised, advisedBed }: TrowelAsked): NonNullable<Limit['wouldPass']> {
  const { notch } = job.products.mortar;
  const printed = (ticks: number) => onGrid(ticks, job.print.system, {});
  // Sold in other units, or with a bed that the heights count deeper, what is advised may leave less than is asked for.
  const asked = Math.max(least, statedBed(job) ?? 0);
  // No trowel leaves more than upright: one that is too shallow even so is not worth a trial.
  const upright = bedDepth(notch);
  const isShallow = printed(upright) < printed(asked);
  return {
    code: isShallow ? `limit.trowel.shallow.${advised.kind}` : `limit.trowel.${advised.kind}`,
    figures: {
      ownKind: notch.kind,
      ownNotchWidth: notch.width,
      ownNotchDepth: notch.depth,
      ...(isShallow ? { most: Math.round(upright) } : {}),
      notchWidth: advised.width,
      notchDepth: advised.depth,
      notchSpace: advised.space,
      short: printed(advisedBed) < printed(asked) ? 'yes' : 'no',
      advisedBed: Math.round(advisedBed),
      asked: Math.round(asked),
    },
  };
}
