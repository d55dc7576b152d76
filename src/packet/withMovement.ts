import type { Job, SurfaceSpec } from '../job/Job.ts';
import { carriedJoints } from '../layout/carriedJoints.ts';
import type { Layout } from '../layout/Layout.ts';
import { placeMovement } from '../layout/movement/placeMovement.ts';
import { sameWide } from '../layout/movement/sameWide.ts';
import type { WideJoint } from '../layout/movement/WideJoint.ts';
import { wideJointsOf } from '../layout/movement/wideJointsOf.ts';
import { isSlanted } from '../layout/start/mainRuns.ts';
import type { PlacedBase } from '../room/PlacedBase.ts';
import { bayLimit } from '../trade/index.ts';
import { turnedBase } from './turnedBase.ts';

/** The floor laid with joints that are to be wide, as near as it has any there; undefined where it cannot be. */
type LayWide = (wide: readonly WideJoint[]) => Layout | undefined;

/** Layouts at most until the soft joints of one are those it was laid with. */
const MOST_ROUNDS = 8;

/**
 * A layout with its soft joints, where its floor is longer than one bay; the base lies in the room's frame. Where soft joints are
 * wider than the grout joint the floor is laid anew with them: they follow from its start and its start from them, so again until
 * both agree. Told and not laid where they never do, and where `lay` is not given, a border or an inlay lies across them or the
 * pattern lies aslant.
 */
export function withMovement(
  job: Pick<Job, 'base' | 'print'>,
  surface: Pick<SurfaceSpec, 'exposure' | 'pattern'>,
  base: PlacedBase,
  layout: Layout,
  lay?: LayWide,
): Layout {
  const told = jointed(job, surface, base, layout);
  const { movement } = told;
  if (!movement || movement.laid || !lay || layout.inner || isSlanted(surface.pattern.turnedDeg)) return told;
  let agreed: Layout | undefined;
  let wide = wideOf(told);
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const laid = lay(wide);
    if (!laid) break;
    const next = jointed(job, surface, base, laid);
    if (next.movement?.laid) agreed = next;
    if (next.movement?.laid && sameWide(wide, next.wide ?? [])) return next;
    wide = wideOf(next);
  }
  return agreed ?? told;
}

function wideOf({ movement, pattern }: Layout): readonly WideJoint[] {
  return wideJointsOf(movement?.lines ?? [], pattern.joint);
}

function jointed(
  job: Pick<Job, 'base' | 'print'>,
  { exposure }: Pick<SurfaceSpec, 'exposure'>,
  base: PlacedBase,
  layout: Layout,
): Layout {
  const { system } = job.print;
  const limit = bayLimit(exposure, job.base.heated, system);
  const carried = carriedJoints(layout, turnedBase(base, layout.turn));
  const movement = placeMovement(layout, { limit, exposure, carried, system });
  return movement ? { ...layout, movement } : layout;
}
