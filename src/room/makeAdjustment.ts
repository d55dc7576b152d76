import { type Point, type Ring, ringArea } from '../geometry/index.ts';
import type { SurfaceSpec } from '../job/Job.ts';
import { TICKS_PER_INCH, type Ticks } from '../measure/index.ts';
import { compassRule } from './compassRule.ts';
import { unknownCount } from './designRows.ts';
import { type LeastSquares, leastSquares } from './leastSquares.ts';
import { measureNext } from './measureNext.ts';
import { distinctPairs, type Observation, observations, readingSd } from './observations.ts';
import type { AdjustedReading, Adjustment } from './Room.ts';
import { alignFirst, angleMisclosureDeg, cornersOfLegs, traverse } from './traverse.ts';

export interface AdjustedCorners {
  /** Rounded to ticks, the first at the origin, the second on +x. */
  readonly corners: Ring;
  readonly adjustment: Adjustment;
  /** Corners' inner angles were said so badly that the shape is a guess. */
  readonly angleMisclosureDeg: number;
}

/** Where and by how much the readings contradict each other. */
interface Misclosure {
  readonly at: string;
  readonly by: number;
}

/** Angles by eye may be out by this much in all before they must be said better. */
export const mostAngleMisclosureDeg = 15;

/**
 * The largest misclosure that is spread over the readings: 2 in, or 1 % of the walk round the room where that is more.
 * Common practice, no source.
 *
 * @example
 * misclosureLimit(100000) //=> 16256
 * misclosureLimit(2000000) //=> 20000
 */
export function misclosureLimit(perimeter: Ticks): Ticks {
  return Math.max(2 * TICKS_PER_INCH, Math.round(perimeter / 100));
}

/** Below this share a reading is checked by nothing. */
const unchecked = 1e-6;

/** The reading that the others contradict most, and by how much it would be out if it alone were wrong. */
function worstReading(solved: LeastSquares, seen: readonly Observation[]): Misclosure {
  const suspects = seen.map(({ id, read }, i) => {
    const share = solved.redundancies[i]!;
    const residual = Math.abs(solved.residuals[i]!);
    if (share < unchecked) return { at: id, by: residual, test: residual / readingSd };
    return {
      at: id,
      by: residual / share,
      test: (residual / readingSd) * Math.sqrt(read.length / share),
    };
  });
  const most = Math.max(...suspects.map(({ test }) => test));
  // One reading too many makes every reading equally suspect; of equals the one that would be out most is named.
  return suspects.filter(({ test }) => test >= 0.999 * most).reduce((a, b) => (b.by > a.by ? b : a));
}

function adjustedReading(one: Observation, corners: Ring): AdjustedReading {
  const [a, b] = [corners[one.from]!, corners[one.to]!];
  const used = Math.round(Math.hypot(b[0] - a[0], b[1] - a[1]));
  const { id, kind, read, mean } = one;
  return { id, kind, read, mean, used, correction: used - mean };
}

const rounded = (points: readonly Point[]): Ring =>
  alignFirst(points).map(([x, y]): Point => [Math.round(x) + 0, Math.round(y) + 0]);

/** The diagonal that departs most from a room closed by its walls and angles, or the end of the walk. */
function worstOfWalk(walk: Misclosure, readings: readonly AdjustedReading[]): Misclosure {
  return readings
    .filter(({ kind }) => kind === 'diagonal')
    .map(({ id, correction }) => ({ at: id, by: Math.abs(correction) }))
    .reduce((a, b) => (b.by > a.by ? b : a), walk);
}

/**
 * The room's corners from its readings: by least squares where they fix the shape, else the walls and the corners'
 * angles closed by the compass rule, with each correction and the diagonal that would help first.
 */
export function makeAdjustment(surface: SurfaceSpec): AdjustedCorners {
  const seen = observations(surface);
  const lengths = surface.walls.map((_, i) => seen[i]!.mean);
  const angles = surface.corners.map(({ angleDeg }) => angleDeg);
  const straight = angles.flatMap((angle, i) => (angle === 180 ? [i] : []));
  const closed = compassRule(traverse(lengths, angles), lengths);
  const start = alignFirst(cornersOfLegs(closed.legs));
  const redundancy = distinctPairs(seen) + straight.length - unknownCount(surface.corners.length);
  const solved = redundancy >= 0 ? leastSquares(start, seen, straight) : undefined;
  const fits = solved && ringArea(solved.corners) > 0 ? solved : undefined;
  const corners = rounded(fits?.corners ?? start);
  const readings = seen.map((one) => adjustedReading(one, corners));
  const first = surface.corners[0]!.name;
  const worst = fits
    ? redundancy > 0
      ? worstReading(fits, seen)
      : { at: first, by: 0 }
    : worstOfWalk({ at: first, by: Math.hypot(...closed.misclosure) }, readings);
  const left = fits ? redundancy : Math.min(redundancy, 0);
  const next = left > 0 ? undefined : measureNext(surface.corners, corners, seen);
  return {
    corners,
    angleMisclosureDeg: fits && (redundancy > 0 || corners.length === 3) ? 0 : angleMisclosureDeg(angles),
    adjustment: {
      method: fits ? 'leastSquares' : 'compass',
      redundancy: left,
      misclosure: Math.round(worst.by),
      misclosureAt: worst.at,
      perimeter: readings.slice(0, corners.length).reduce((sum, { used }) => sum + used, 0),
      readings,
      ...(next === undefined ? {} : { measureNext: next }),
    },
  };
}
