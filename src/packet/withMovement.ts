import type { Job, SurfaceSpec } from '../job/Job.ts';
import { carriedJoints } from '../layout/carriedJoints.ts';
import type { Layout } from '../layout/Layout.ts';
import { placeMovement } from '../layout/movement/placeMovement.ts';
import type { SoftLine } from '../layout/movement/SoftLine.ts';
import { sameWide } from '../layout/movement/sameWide.ts';
import { wideJointsOf } from '../layout/movement/wideJointsOf.ts';
import type { Wishes } from '../layout/readyFloor.ts';
import { isSlanted } from '../layout/start/mainRuns.ts';
import type { PlacedBase } from '../room/PlacedBase.ts';
import { bayLimit } from '../trade/index.ts';
import { turnedBase } from './turnedBase.ts';

/** The floor laid as it is asked for, its wide joints as near as it has any there; undefined where it cannot be. */
type LayAnew = (wishes: Wishes) => Layout | undefined;

/** Layouts at most until the soft joints of one are those it was laid with. */
const MOST_ROUNDS = 8;

/**
 * A layout with its soft joints, where its floor is longer than one bay; the base lies in the room's frame. Where soft joints are
 * wider than the grout joint, or run through a border or an inlay, the floor is laid anew with them: they follow from its start and
 * its start from them, so again until both agree. Told and not laid where they never do, and where `lay` is not given; told wider
 * where the pattern lies aslant.
 */
export function withMovement(
  job: Pick<Job, 'base' | 'print'>,
  surface: Pick<SurfaceSpec, 'exposure' | 'pattern'>,
  base: PlacedBase,
  layout: Layout,
  lay?: LayAnew,
): Layout {
  const place = (laid: Layout) => jointed(job, surface, base, laid);
  const told = place(layout);
  if (!told.movement || !lay) return told;
  const isWide = !told.movement.laid && !isSlanted(surface.pattern.turnedDeg);
  if (!layout.inner) return (isWide && laidWith(told, wideOnly, lay, place)) || told;
  if (told.movement.lines.length === 0) return told;
  return (isWide && laidWith(told, both, lay, place)) || laidWith(told, softOnly, lay, place) || told;
}

const wideOnly = (layout: Layout): Wishes => ({ wide: wideOf(layout) });
const softOnly = ({ movement }: Layout): Wishes => ({ soft: movement?.lines ?? [] });
const both = (layout: Layout): Wishes => ({ ...wideOnly(layout), ...softOnly(layout) });

/** A floor laid with what its own soft joints ask for; undefined where no layout agrees with itself. */
function laidWith(
  told: Layout,
  wishesOf: (layout: Layout) => Wishes,
  lay: LayAnew,
  place: (laid: Layout) => Layout,
): Layout | undefined {
  let agreed: Layout | undefined;
  let wishes = wishesOf(told);
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const laid = lay(wishes);
    if (!laid) break;
    const next = place(laid);
    const wanted = wishesOf(next);
    const isLaid = (!wishes.wide || next.movement?.laid) && sameSoft(wishes.soft ?? [], wanted.soft ?? []);
    if (isLaid) agreed = next;
    if (isLaid && sameWide(wishes.wide ?? [], next.wide ?? [])) return next;
    wishes = wanted;
  }
  return agreed;
}

function sameSoft(one: readonly SoftLine[], other: readonly SoftLine[]): boolean {
  const keys = (lines: readonly SoftLine[]) => lines.map(({ axis, at, width }) => `${axis} ${at} ${width}`);
  return keys(one).join() === keys(other).join();
}

function wideOf({ movement, pattern }: Layout): NonNullable<Wishes['wide']> {
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
