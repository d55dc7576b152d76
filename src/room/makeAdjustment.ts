import { type Point, type Ring, ringArea } from '../geometry/index.ts';
import type { SurfaceSpec } from '../job/Job.ts';
import { compassRule } from './compassRule.ts';
import { unknownCount } from './designRows.ts';
import { leastSquares } from './leastSquares.ts';
import { measureNext } from './measureNext.ts';
import { distinctPairs, type Observation, observations } from './observations.ts';
import type { AdjustedReading, Adjustment } from './Room.ts';
import { alignFirst, angleMisclosureDeg, cornersOfLegs, traverse } from './traverse.ts';
import { type Misclosure, worstReading } from './worstReading.ts';

export interface AdjustedCorners {
  /** Rounded to ticks, the first at the origin, the second on +x. */
  readonly corners: Ring;
  readonly adjustment: Adjustment;
  /** By how much the corners' angles close no figure, where the shape rests on them; else 0. */
  readonly angleMisclosureDeg: number;
}

/** A shape before it is rounded. */
interface Fit {
  readonly method: Adjustment['method'];
  readonly corners: readonly Point[];
  readonly redundancy: number;
  readonly worst: Misclosure;
}

/** Walls and angles closed by the compass rule: nothing checks them but the misclosure of the walk. */
function fitByWalk(surface: SurfaceSpec, seen: readonly Observation[]): Fit {
  const lengths = surface.walls.map((_, i) => seen[i]!.mean);
  const angles = surface.corners.map(({ angleDeg }) => angleDeg);
  const { legs, misclosure } = compassRule(traverse(lengths, angles), lengths);
  return {
    method: 'compass',
    corners: alignFirst(cornersOfLegs(legs)),
    redundancy: Math.min(redundancyOf(surface, seen), 0),
    worst: { at: surface.corners[0]!.name, by: Math.hypot(...misclosure) },
  };
}

/** Corners said to be straight are observed to be so; each counts as a reading. */
const straightCorners = (surface: SurfaceSpec) =>
  surface.corners.flatMap(({ angleDeg }, i) => (angleDeg === 180 ? [i] : []));

const redundancyOf = (surface: SurfaceSpec, seen: readonly Observation[]) =>
  distinctPairs(seen) + straightCorners(surface).length - unknownCount(surface.corners.length);

/** All readings fitted; undefined where they do not fix the shape. */
function fitByReadings(surface: SurfaceSpec, seen: readonly Observation[], start: Fit): Fit | undefined {
  const redundancy = redundancyOf(surface, seen);
  if (redundancy < 0) return undefined;
  const solved = leastSquares(start.corners, seen, straightCorners(surface));
  if (!solved || ringArea(solved.corners) <= 0) return undefined;
  const worst = redundancy > 0 ? worstReading(solved, seen) : { at: start.worst.at, by: 0 };
  return { method: 'leastSquares', corners: solved.corners, redundancy, worst };
}

const rounded = (points: readonly Point[]): Ring =>
  alignFirst(points).map(([x, y]): Point => [Math.round(x) + 0, Math.round(y) + 0]);

function adjustedReading(one: Observation, corners: Ring): AdjustedReading {
  const [a, b] = [corners[one.from]!, corners[one.to]!];
  const used = Math.round(Math.hypot(b[0] - a[0], b[1] - a[1]));
  const { id, kind, read, mean } = one;
  return {
    id,
    kind,
    read,
    mean,
    used,
    correction: used - mean,
    setAside: false,
    redundancyNumber: 0,
    test: null,
    smallestSlip: null,
  };
}

/** A diagonal that did not take part in the shape may contradict it more than the walk contradicts itself. */
function worstOf({ method, worst }: Fit, readings: readonly AdjustedReading[]): Misclosure {
  if (method === 'leastSquares') return worst;
  return readings
    .filter(({ kind }) => kind === 'diagonal')
    .map(({ id, correction }) => ({ at: id, by: Math.abs(correction) }))
    .reduce((a, b) => (b.by > a.by ? b : a), worst);
}

/**
 * The room's corners from its readings: by least squares where they fix the shape, else the walls and the corners'
 * angles closed by the compass rule. Either way each reading is kept beside the value used, with its correction, and
 * where nothing checks the shape the diagonal is named that would help first.
 */
export function makeAdjustment(surface: SurfaceSpec): AdjustedCorners {
  const seen = observations(surface);
  const walk = fitByWalk(surface, seen);
  const fit = fitByReadings(surface, seen, walk) ?? walk;
  const corners = rounded(fit.corners);
  const readings = seen.map((one) => adjustedReading(one, corners));
  const worst = worstOf(fit, readings);
  const next = fit.redundancy > 0 ? undefined : measureNext(surface.corners, corners, seen);
  const sure = fit.redundancy > 0 || (fit.method === 'leastSquares' && corners.length === 3);
  return {
    corners,
    angleMisclosureDeg: sure ? 0 : angleMisclosureDeg(surface.corners.map(({ angleDeg }) => angleDeg)),
    adjustment: {
      method: fit.method,
      redundancy: fit.redundancy,
      misclosure: Math.round(worst.by),
      misclosureAt: worst.at,
      perimeter: readings.slice(0, corners.length).reduce((sum, { used }) => sum + used, 0),
      readings,
      degreesOfFreedom: fit.redundancy,
      precision: surface.precision,
      unitSd: null,
      globalTest: null,
      suspects: [],
      corners: surface.corners.map(({ name, angleDeg }) => ({ name, angleDeg, sd: null, lean: null })),
      ...(next === undefined ? {} : { measureNext: next }),
    },
  };
}
