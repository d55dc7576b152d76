import type { Job } from '../job/Job.ts';
import type { Layout } from '../layout/Layout.ts';
import type { Limit } from '../trade/index.ts';
import { laidSurfaces } from './laidSurfaces.ts';
import { baseLimits } from './limits/baseLimits.ts';
import { bedLimits } from './limits/bedLimits.ts';
import { carriedLimits } from './limits/carriedLimits.ts';
import { heatLimits } from './limits/heatLimits.ts';
import { houseLimits } from './limits/houseLimits.ts';
import { movementLimits } from './limits/movementLimits.ts';
import { runningLimits } from './limits/runningLimits.ts';
import { tileLimits } from './limits/tileLimits.ts';
import { wetLimits } from './limits/wetLimits.ts';

/**
 * The rules of the trade held against a job: what was found, the limit, its source and what would pass. Stops that
 * follow from the age of the house come first. `found` is `onSite` for what is checked on the floor, with the limit to
 * check it by; it then passes here.
 */
export function makeLimits(job: Job, layouts: readonly Layout[]): readonly Limit[] {
  const surfaces = laidSurfaces(job, layouts);
  const all = new Set(surfaces.flatMap(({ tiles }) => tiles));
  return [
    ...houseLimits(job),
    ...[...all].flatMap((tile) => tileLimits(tile, job.joint)),
    ...surfaces.flatMap((laid) => [
      ...runningLimits(laid, job.joint),
      ...baseLimits(job, laid),
      ...movementLimits(job, laid),
      ...wetLimits(laid, job.joint),
    ]),
    ...bedLimits(job),
    ...carriedLimits(job),
    ...heatLimits(job),
  ];
}
