import type { Cuts } from '../cuts/Cut.ts';
import { isHard } from '../cuts/isHard.ts';
import type { Job } from '../job/Job.ts';
import type { Candidate, Layout } from '../layout/Layout.ts';
import { layAnother } from '../layout/layAnother.ts';
import { type CurveGround, curveGround } from '../layout/start/curve/CurveGround.ts';
import { curveCandidates } from '../layout/start/curve/curveCandidates.ts';
import { countTiles } from '../tiles/countTiles.ts';
import { makeTilePlans } from '../tiles/makeTilePlans.ts';
import { curveFronts, type OnCurve } from './curveFronts.ts';
import { cutsWithoutRows } from './cutsWithoutRows.ts';
import type { Stages } from './makeSurface.ts';
import { type FastCounted, fastCounted, movedStarts } from './movedStarts.ts';
import type { CurvePoint } from './Packet.ts';
import { seenPieces } from './seenPieces.ts';
import { insideCuts } from './toldInside.ts';

/** Starts beside the chosen one at most. */
const MOST_OTHERS = 5;
/** Starts counted to the last at most, those nearest to the curve by the fast count first. */
const MOST_COUNTED = 12;
/** A narrowest cut that is wider by less than this share of a tile is no reason for a tile more. */
const SAME_SHARE = 0.005;

/**
 * The chosen start and those that are worth a look beside it, on the curve of narrowest cut against tiles: each takes fewer tiles than
 * all with a wider narrowest cut. Counted by laying, cutting and sharing the tiles of each; of tiles of several kinds all together. None
 * has more pieces too thin to be sawn than the chosen one. Empty once the work has begun, and for tiles in two colors by turns.
 */
export function makeCurve(
  job: Job,
  { surface, room, layout, cuts }: Pick<Stages, 'surface' | 'room' | 'layout' | 'cuts'>,
): readonly CurvePoint[] {
  if (job.status !== 'planned' || surface.pattern.checker) return [];
  const on = curveGround(job, surface, room, layout);
  if (!on) return [];
  const found = on.byCourse ? curveCandidates(on).map((one) => fastCounted(job, one)) : movedStarts(job, on);
  const laid = [...comparedStarts(job, { surface, room, layout }, on), ...found];
  const own = pointOf(job, layout, cuts, layout.start.chosen);
  const sound = laid.filter(({ candidate }) => sliversOf(candidate) <= sliversOf(own.candidate));
  const others: Counted[] = [];
  for (const one of curveFronts(
    sound.filter((one) => sound.every((other) => !isFarBetter(other, one))),
  ).flat()) {
    if (others.length === MOST_COUNTED) break;
    if ([own, ...others].some((known) => isBeyond(known, one))) continue;
    others.push(pointOf(job, one.laid, cutsWithoutRows(job, one.laid), one.candidate));
  }
  others.sort((a, b) => b.candidate.smallestShare - a.candidate.smallestShare || a.tiles - b.tiles);
  const kept: Counted[] = [];
  for (const one of others) {
    if (isWorthIt(one, [own, ...kept])) kept.push(one);
  }
  return [own, ...kept.slice(0, MOST_OTHERS)].map((point) => withBoxes(job, point));
}

/**
 * The starts that are compared with the chosen one, as they are: what is said of all that were tried holds for them too. Only where cuts at
 * the walls name them, so not where the pattern lies in no courses or the job holds it on an axis; none with another joint or more strips.
 */
function comparedStarts(
  job: Job,
  { surface, room, layout }: Pick<Stages, 'surface' | 'room' | 'layout'>,
  { free, wallsAt, byCourse }: CurveGround,
): readonly FastCounted[] {
  const { runnerUp, alternatives } = layout.start;
  if (!byCourse || !free.every(Boolean)) return [];
  return [...(runnerUp ? [runnerUp] : []), ...alternatives]
    .filter(
      ({ origin, reason }) =>
        wallsAt(origin) !== undefined && reason.every(({ code }) => code !== 'start.easedJoint'),
    )
    .map((candidate) =>
      fastCounted(job, { candidate, laid: layAnother(layout, surface, room, job.print.step, candidate) }),
    );
}

/** How many boxes a start takes with what breaks, spares and what is kept; only for those that are shown. */
function withBoxes(job: Job, { laid, cuts, ...point }: Counted): CurvePoint {
  const plans = Object.values(makeTilePlans(job, [laid], [cuts]));
  const boxes = plans.reduce((sum, plan) => sum + plan.boxes, 0);
  return { ...point, ...(boxes > 0 && { boxes }) };
}

/** Pieces that are too thin to be sawn. */
const sliversOf = ({ slivers = 0 }: Candidate) => slivers;

/** Whether a start has as wide a narrowest cut with two tiles less: counting fast is hardly ever a tile off. */
function isFarBetter(one: OnCurve, than: OnCurve): boolean {
  return one.atMost <= than.atMost - 2 && one.share >= than.share - SAME_SHARE;
}

/** Whether a start that is counted to the last leaves no room for one that is counted fast, though that is a tile off. */
function isBeyond({ candidate, tiles }: CurvePoint, one: OnCurve): boolean {
  return tiles <= one.atMost - 1 && candidate.smallestShare >= one.share - SAME_SHARE;
}

/** Whether no start that is known has as wide a narrowest cut with as few tiles. */
function isWorthIt({ candidate, tiles }: CurvePoint, known: readonly CurvePoint[]): boolean {
  return !known.some(
    (one) => one.tiles <= tiles && one.candidate.smallestShare >= candidate.smallestShare - SAME_SHARE,
  );
}

/** A point with what it was counted from. */
type Counted = CurvePoint & { readonly laid: Layout; readonly cuts: Cuts };

function pointOf(job: Job, laid: Layout, cuts: Cuts, candidate: Candidate): Counted {
  const { tiles, bound } = countTiles(job, laid, cuts);
  // As the saw list has them: what is on a card is marked by hand and not set on the fence.
  const fenced = cuts.cuts.filter((cut) => !isHard(cut));
  const fences = new Set(fenced.flatMap((cut) => cut.fences.map(({ saw }) => saw)));
  const isAll = laid.pieces.length === candidate.pieces;
  const told = isAll ? { ...candidate, hardCuts: insideCuts(cuts) } : candidate;
  return { candidate: told, tiles, bound, fences: fences.size, pieces: seenPieces(laid.pieces), laid, cuts };
}
