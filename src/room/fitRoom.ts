import { type Point, ringArea } from '../geometry/index.ts';
import type { SurfaceSpec } from '../job/Job.ts';
import { linePlaces } from './baseLine.ts';
import { compassRule } from './compassRule.ts';
import { unknownCount } from './designRows.ts';
import { type LeastSquares, leastSquares } from './leastSquares.ts';
import { distinctCount, type Observation } from './observations.ts';
import { alignFirst, cornersOfLegs, traverse } from './traverse.ts';

/** Walls and angles closed by the compass rule. */
export interface Walk {
  /** The first corner at the origin, the second on +x; not rounded. */
  readonly corners: readonly Point[];
  /** By how much the walk misses its beginning. */
  readonly misclosure: number;
}

/** The inner angle that a corner's check gives; of the two that it may mean, the one nearer to what was told. */
function checkedAngleDeg(surface: SurfaceSpec, name: string, toldDeg: number): number {
  const check = surface.cornerChecks.find(({ corner }) => corner === name);
  if (!check || surface.setAside.includes(name)) return toldDeg;
  const [a, b] = check.legs;
  const c = check.readings.reduce((sum, one) => sum + one, 0) / check.readings.length;
  const angle = (Math.acos(Math.min(Math.max((a * a + b * b - c * c) / (2 * a * b), -1), 1)) * 180) / Math.PI;
  return toldDeg > 180 ? 360 - angle : angle;
}

/** Inner angles as checked, else as told. */
export const anglesOf = (surface: SurfaceSpec): number[] =>
  surface.corners.map(({ name, angleDeg }) => checkedAngleDeg(surface, name, angleDeg));

/** Nothing checks walls and angles but the misclosure of the walk. */
export function walkRound(surface: SurfaceSpec, walls: readonly number[]): Walk {
  const { legs, misclosure } = compassRule(traverse(walls, anglesOf(surface)), walls);
  return { corners: alignFirst(cornersOfLegs(legs)), misclosure: Math.hypot(...misclosure) };
}

/** Corners said to be straight are observed to be so; each counts as a reading. */
const straightCorners = (surface: SurfaceSpec) =>
  surface.corners.flatMap(({ angleDeg }, i) => (angleDeg === 180 ? [i] : []));

/** Readings that can take part: those not set aside; a base line tells nothing before two corners are read from it. */
export function usable(surface: SurfaceSpec, seen: readonly Observation[]): Observation[] {
  const wanted = seen.filter(({ id }) => !surface.setAside.includes(id));
  return linePlaces(wanted).size > 1 ? wanted : wanted.filter(({ kind }) => kind !== 'baseLine');
}

/** How many different things have been read more than the shape needs. */
export function redundancyOf(surface: SurfaceSpec, seen: readonly Observation[]): number {
  const ofLine = seen.some(({ kind }) => kind === 'baseLine') ? 3 : 0;
  return (
    distinctCount(seen) + straightCorners(surface).length - unknownCount(surface.corners.length) - ofLine
  );
}

/** Where to begin: as all corners stand on the base line, else the walk round. */
function begin(walk: Walk, seen: readonly Observation[]): readonly Point[] {
  const places = linePlaces(seen);
  if (places.size < walk.corners.length) return walk.corners;
  const ring = walk.corners.map((_, i) => places.get(i)!);
  const left = ringArea(ring) > 0 ? ring : ring.map(([x, y]): Point => [x, -y]);
  return alignFirst(left);
}

/** All readings fitted; undefined where they do not fix the shape. */
export function fitReadings(
  surface: SurfaceSpec,
  seen: readonly Observation[],
  walk: Walk,
): LeastSquares | undefined {
  if (redundancyOf(surface, seen) < 0) return undefined;
  const straight = { corners: straightCorners(surface), sd: surface.precision.sd };
  const solved = leastSquares(begin(walk, seen), seen, straight);
  return solved && ringArea(solved.corners) > 0 ? solved : undefined;
}
