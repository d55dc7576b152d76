import type { Job, SurfaceSpec } from '../job/Job.ts';
import { carriedJoints } from '../layout/carriedJoints.ts';
import type { Layout } from '../layout/Layout.ts';
import { placeMovement } from '../layout/movement/placeMovement.ts';
import type { PlacedBase } from '../room/PlacedBase.ts';
import { bayLimit } from '../trade/index.ts';
import { turnedBase } from './turnedBase.ts';

/** A layout with its soft joints, where its floor is longer than one bay; the base lies in the room's frame. */
export function withMovement(
  job: Pick<Job, 'base' | 'print'>,
  { exposure }: Pick<SurfaceSpec, 'exposure'>,
  base: PlacedBase,
  layout: Layout,
): Layout {
  const limit = bayLimit(exposure, job.base.heated, job.print.system);
  const carried = carriedJoints(layout, turnedBase(base, layout.turn));
  const movement = placeMovement(layout, { limit, exposure, carried });
  return movement ? { ...layout, movement } : layout;
}
