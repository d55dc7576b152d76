import type { Point } from '../../geometry/index.ts';
import type { StartWish } from '../../job/Job.ts';
import type { Pattern } from '../../pattern/Pattern.ts';
import type { Ground } from '../frame/Ground.ts';
import type { AxisStart } from '../Layout.ts';
import { type AxisOffer, balancedOffers } from './balanced.ts';
import type { Choice, MainRuns } from './Choice.ts';
import type { FacingRun } from './findRuns.ts';
import { stretchOf } from './stretchOf.ts';
import { wishedOffer } from './wishedOffer.ts';
import { wishText } from './wishText.ts';

/** What may be done on one axis: a wish gives one start, `best` gives four on the run that decides. */
export interface AxisPlan {
  readonly starts: readonly AxisStart[];
  readonly offers: readonly AxisOffer[];
  readonly run: FacingRun;
}

/** The starts of one axis, or the name of an edge that the room does not have. */
export function planAxis(
  wish: StartWish,
  ground: Ground,
  pattern: Pattern,
  axis: 0 | 1,
  main: FacingRun,
): AxisPlan | { readonly unknown: string } {
  if (wish.kind === 'best') {
    const offers = balancedOffers(stretchOf(main, pattern, axis));
    return planOn(axis === 0 ? offers : withCourses(offers, pattern), 'best', main, ground);
  }
  const wished = wishedOffer(wish, ground, pattern, axis);
  if ('unknown' in wished) return wished;
  const plan = planOn([wished.offer], wishText(wish), wished.run, ground);
  return { ...plan, run: wished.run ?? main };
}

/** Across, each start with each kind of course of the repeat in its place. */
function withCourses(offers: readonly AxisOffer[], { module, tiles, b }: Pattern): AxisOffer[] {
  // A length that steps repeats no course: the one beside is tried too.
  const kinds = b[0] !== 0 ? [0, -1] : tiles.map((_, course) => course);
  return offers.flatMap((offer) =>
    kinds.map((course) => ({ ...offer, position: Math.round(offer.position + course * module[1]) })),
  );
}

/** Offers on a run as starts of an axis, said in the names of the run's faces. */
export function planOn(
  offers: readonly AxisOffer[],
  wish: string,
  run: FacingRun | undefined,
  { faces }: Ground,
): AxisPlan {
  const named = run && {
    from: faces[run.lowFace]!.id,
    to: faces[run.highFace]!.id,
    length: run.high - run.low,
  };
  const starts = offers.map(({ what, position }) => ({ wish, what, position, ...(named && { run: named }) }));
  return { starts, offers, run: run! };
}

/** Every start along with every start across. */
export function crossed(along: AxisPlan, across: AxisPlan): Choice[] {
  return along.offers.flatMap((one, i) =>
    across.offers.map((other, j): Choice => {
      const origin: Point = [one.position, other.position];
      return { origin, along: along.starts[i]!, across: across.starts[j]!, shift: one.shift + other.shift };
    }),
  );
}

/** The runs that two plans stand on. */
export function runsOf(along: AxisPlan, across: AxisPlan): MainRuns {
  return { along: along.run, across: across.run };
}
