import type { Point, Ring } from '../geometry/index.ts';
import type { SurfaceSpec } from '../job/Job.ts';
import type { System } from '../measure/index.ts';
import { adjustedCorners } from './adjustedCorners.ts';
import { adjustedReadings } from './adjustedReadings.ts';
import { exchangedWalls } from './exchangedWalls.ts';
import { findSuspects, repeatDoubts } from './findSuspects.ts';
import { anglesOf, fitReadings, redundancyOf, usable, type Walk, walkRound } from './fitRoom.ts';
import { type Covariance, freeCovariance } from './freeCovariance.ts';
import type { LeastSquares } from './leastSquares.ts';
import { measureNext } from './measureNext.ts';
import { misclosureLimit } from './misclosureLimit.ts';
import { nextReading } from './nextReading.ts';
import { type Observation, observations } from './observations.ts';
import { chiSquareLimit } from './quantiles.ts';
import type { AdjustedReading, Adjustment, Suspect } from './Room.ts';
import { readingTest } from './readingTest.ts';
import { degreesOfFreedom, keptOf, slipsIn, squaresOf } from './slips.ts';
import { exchangedSuspects, suspectOf } from './suspects.ts';
import { alignFirst, angleMisclosureDeg } from './traverse.ts';
import { type Misclosure, worstReading } from './worstReading.ts';

export interface AdjustedCorners {
  /** Rounded to ticks, the first at the origin, the second on +x. */
  readonly corners: Ring;
  readonly adjustment: Adjustment;
  /** By how much the corners' angles close no figure, where the shape rests on them; else 0. */
  readonly angleMisclosureDeg: number;
}

/** A shape before it is rounded; `solved` where the readings fix it. */
interface Fit {
  readonly walk: Walk;
  readonly solved?: LeastSquares;
  readonly redundancy: number;
  /** Readings that took part. */
  readonly used: readonly Observation[];
}

function fitRoom(surface: SurfaceSpec, seen: readonly Observation[]): Fit {
  const used = usable(surface, seen);
  const walk = walkRound(
    surface,
    surface.walls.map((_, i) => seen[i]!.mean),
  );
  const redundancy = redundancyOf(surface, used);
  const solved = fitReadings(surface, used, walk);
  return solved ? { walk, solved, redundancy, used } : { walk, redundancy: Math.min(redundancy, 0), used };
}

const rounded = (points: readonly Point[]): Ring =>
  alignFirst(points).map(([x, y]): Point => [Math.round(x) + 0, Math.round(y) + 0]);

/** A diagonal that did not take part in the shape may contradict it more than the walk contradicts itself. */
function worstOf(
  surface: SurfaceSpec,
  fit: Fit,
  readings: readonly AdjustedReading[],
  gross: number,
): Misclosure {
  const first = surface.corners[0]!.name;
  if (fit.solved)
    return fit.redundancy > 0 ? worstReading(fit.solved, fit.used, gross) : { at: first, by: 0 };
  return readings
    .filter(({ kind, setAside }) => kind === 'diagonal' && !setAside)
    .map(({ id, correction }) => ({ at: id, by: Math.abs(correction) }))
    .reduce((a, b) => (b.by > a.by ? b : a), { at: first, by: fit.walk.misclosure });
}

/** What the readings show of their own precision. */
function precisionShown({ precision }: SurfaceSpec, { solved, used }: Fit) {
  const kept = keptOf(used);
  const freedom = solved ? degreesOfFreedom(kept, solved) : 0;
  if (!solved || freedom < 1) return { unitSd: null, globalTest: null, squares: 0 };
  const squares = squaresOf(kept, solved);
  const limit = chiSquareLimit(0.95, freedom);
  return {
    unitSd: Math.sqrt(squares / freedom),
    globalTest: precision.kind === 'stated' ? { statistic: squares, limit, passed: squares <= limit } : null,
    squares,
  };
}

/** Readings that the others contradict, and walls that seem to bear each other's reading. */
function suspectsOf(
  surface: SurfaceSpec,
  fit: Fit,
  misclosed: boolean,
  squares: number,
  system: System,
): Suspect[] {
  const { solved, used, walk } = fit;
  const doubts = solved
    ? findSuspects(used, surface.precision, (seen) => fitReadings(surface, seen, walk))
    : repeatDoubts(used, surface.precision);
  if (doubts.length === 0 && !misclosed) return [];
  const pairs = exchangedWalls(surface, solved ? squares : undefined);
  if (pairs.length > 0 && (solved || misclosed)) return exchangedSuspects(pairs, surface);
  return doubts.map((doubt) => suspectOf(doubt, used, system));
}

/** How sure the corners are, in ticks; undefined where nothing tells. */
function covarianceOf({ precision }: SurfaceSpec, { solved }: Fit, unitSd: number | null) {
  if (!solved || (precision.kind === 'unknown' && unitSd === null)) return undefined;
  const unit = precision.kind === 'unknown' ? unitSd! ** 2 : 1;
  return freeCovariance(solved).map((row) => row.map((one) => one * unit));
}

function whatNext(surface: SurfaceSpec, fit: Fit, corners: Ring, covariance: Covariance | undefined) {
  const unchecked = fit.redundancy <= 0;
  const next =
    covariance &&
    nextReading(surface.corners, corners, fit.used, covariance, surface.precision.sd, unchecked);
  const diagonal = unchecked ? (next?.id ?? measureNext(surface.corners, corners, fit.used)) : undefined;
  return { ...(next ? { next } : {}), ...(diagonal === undefined ? {} : { measureNext: diagonal }) };
}

const fine = (value: number | null) => (value === null ? null : Math.round(value * 1e4) / 1e4);

/**
 * The room's corners from its readings: by least squares where they fix the shape, else the walls and the corners'
 * angles closed by the compass rule. Either way each reading is kept beside the value used, with its correction and how
 * well the others check it; what they contradict is named, and where nothing checks the shape the diagonal that would
 * help first. Usual slips are those of a tape in `system`.
 */
export function makeAdjustment(surface: SurfaceSpec, system: System = 'inches'): AdjustedCorners {
  const seen = observations(surface);
  const fit = fitRoom(surface, seen);
  const { solved, used, redundancy } = fit;
  const corners = rounded((solved ?? fit.walk).corners);
  const kept = keptOf(used);
  const slips = solved ? slipsIn(kept, solved) : [];
  const test = solved && readingTest(surface.precision, kept, solved, slips.length);
  const checked = test ? { slips, test } : undefined;
  const readings = adjustedReadings(surface, seen, used, corners, checked);
  const perimeter = readings.slice(0, corners.length).reduce((sum, one) => sum + one.used, 0);
  const gross = misclosureLimit(perimeter);
  const worst = worstOf(surface, fit, readings, gross);
  const { unitSd, globalTest, squares } = precisionShown(surface, fit);
  const covariance = covarianceOf(surface, fit, unitSd);
  const sure = redundancy > 0 || (solved !== undefined && corners.length === 3);
  return {
    corners,
    angleMisclosureDeg: sure ? 0 : angleMisclosureDeg(anglesOf(surface)),
    adjustment: {
      method: solved ? 'leastSquares' : 'compass',
      redundancy,
      degreesOfFreedom: solved ? degreesOfFreedom(kept, solved) : redundancy,
      misclosure: Math.round(worst.by),
      misclosureAt: worst.at,
      perimeter,
      precision: surface.precision,
      unitSd: fine(unitSd),
      globalTest: globalTest && {
        ...globalTest,
        statistic: fine(globalTest.statistic)!,
        limit: fine(globalTest.limit)!,
      },
      readings,
      suspects: suspectsOf(surface, fit, worst.by > gross, squares, system),
      corners: adjustedCorners(surface, (solved ?? fit.walk).corners, covariance),
      ...whatNext(surface, fit, corners, covariance),
    },
  };
}
