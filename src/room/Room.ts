import type { Point, Ring, Shape } from '../geometry/index.ts';
import type { EdgeFacts, Precision } from '../job/Job.ts';
import type { Ticks } from '../measure/index.ts';
import type { Falls } from './Falls.ts';

/** A surface as adjusted: room frame, ticks, first corner at the origin, the first wall along +x. */
export interface Room {
  readonly surface: string;
  /** One point a corner, counter-clockwise, walls only (no doorways). */
  readonly corners: Ring;
  readonly adjustment: Adjustment;
  /** Corners plus doorway recesses as one ring; edge i runs from point i to i + 1 and is `edges[i]`. */
  readonly outline: Ring;
  readonly edges: readonly RoomEdge[];
  /** Outer rings of obstacles as they stand (holes in the outline where they are free-standing). */
  readonly obstacles: readonly Obstacle[];
  /** Where tile may lie: outline less obstacles, each edge drawn in by its gap. */
  readonly field: readonly Shape[];
  readonly openings: readonly Opening[];
  /** How it falls to a drain; missing where it lies level. */
  readonly falls?: Falls;
}

export interface RoomEdge extends EdgeFacts {
  /** `A-B`, `A-B.2` when a doorway splits it; `hall:line`, `hall:left`, `hall:right`; `cabinet:1` … for obstacles. */
  readonly id: string;
  /** Name by which a job file calls it: wall, doorway or obstacle. */
  readonly name: string;
  readonly from: Point;
  readonly to: Point;
  /** Of a bowed or curved wall, of which this edge is one chord: the circle, and 1 where the wall bulges out of the room, -1 into it. */
  readonly arc?: EdgeArc;
}

export interface EdgeArc {
  readonly centre: Point;
  readonly radius: Ticks;
  readonly sign: 1 | -1;
  /** How far its middle stands off the straight line between the wall's ends; more than 0. */
  readonly rise: Ticks;
}

export interface Obstacle {
  readonly name: string;
  readonly facts: EdgeFacts;
  /** As it stands, without gap; for a circle the polygon of `circle`. Counter-clockwise. */
  readonly ring: Ring;
  /** Grown by its gap. */
  readonly cleared: Ring;
  readonly circle?: { readonly centre: Point; readonly radius: Ticks; readonly clearRadius: Ticks };
  readonly edges: readonly RoomEdge[];
}

export interface Opening {
  readonly name: string;
  readonly wall: string;
  /** Ends of the closed-door line, left to right as seen from the room. */
  readonly line: readonly [Point, Point];
  /** Ends of the clear opening on the wall's face, left to right as seen from the room. */
  readonly face: readonly [Point, Point];
  readonly beyond: string;
  readonly onlyExit: boolean;
}

export interface Adjustment {
  /** `leastSquares` where readings fix the shape, else `compass`. */
  readonly method: 'leastSquares' | 'compass';
  /** How many distances, corner checks and offsets have been read more than needed, each counted once; 0 or less: no
   *  check possible. */
  readonly redundancy: number;
  /** How many readings there are more than unknowns, repeated ones counted each: the sum of all redundancy numbers. */
  readonly degreesOfFreedom: number;
  /** Linear misclosure in ticks and the walk's length. */
  readonly misclosure: Ticks;
  readonly misclosureAt: string;
  readonly perimeter: Ticks;
  /** Standard deviation of one reading as said before; `unknown`: worked out from the readings. */
  readonly precision: Precision;
  /** Standard deviation of one reading as the readings show it, as a multiple of `precision.sd`; null where no reading
   *  is more than needed. */
  readonly unitSd: number | null;
  /** Weighted sum of squared corrections against the 95 % point of chi-square; null where the precision is unknown or
   *  nothing is checked. */
  readonly globalTest: {
    readonly statistic: number;
    readonly limit: number;
    readonly passed: boolean;
  } | null;
  readonly readings: readonly AdjustedReading[];
  /** Readings that the others contradict, the most contradicted first. None is left out of the shape for it. */
  readonly suspects: readonly Suspect[];
  /** One a corner, in the order walked. */
  readonly corners: readonly AdjustedCorner[];
  /** The reading worth taking next, and how far a corner may be out now and with it, root mean square of all corners. */
  readonly next?: { readonly id: string; readonly sdNow: Ticks; readonly sdThen: Ticks };
  /** A diagonal that would help first, when no check is possible. */
  readonly measureNext?: string;
}

export type ReadingKind = 'wall' | 'diagonal' | 'cornerCheck' | 'baseLine';

export interface AdjustedReading {
  /** `A-B`, a diagonal's `A-C`, `B` for the check of a corner, `B:along` and `B:off` for a corner seen from the base line. */
  readonly id: string;
  readonly kind: ReadingKind;
  readonly read: readonly Ticks[];
  readonly mean: Ticks;
  readonly used: Ticks;
  /** used − mean. */
  readonly correction: Ticks;
  /** True for a reading that takes no part in the shape, because the job says so. */
  readonly setAside: boolean;
  /** Share of one reading that the others check, 0 to 1. */
  readonly redundancyNumber: number;
  /** Test of its most contradicted reading: Baarda's w, or Pope's tau where the precision is unknown; suspect over the limit. */
  readonly test: { readonly kind: 'w' | 'tau'; readonly value: number; readonly limit: number } | null;
  /** The smallest slip in one of its readings that would be found in four cases of five; null: any slip could hide. */
  readonly smallestSlip: Ticks | null;
}

export interface Suspect {
  /** Readings to look at, those first that a usual slip would explain. Two walls that look exchanged come together. */
  readonly ids: readonly string[];
  /** Which reading of each, counted from 0; null where it is the only one, all of them, or where they do not tell which. */
  readonly which: readonly (number | null)[];
  /** By how much the first would be read too long; negative: too short. Of exchanged walls, their difference. */
  readonly slip: Ticks;
  /** `tied`: the readings tell that one of these is wrong, not which. */
  readonly verdict: 'named' | 'tied';
  /** What slips usually look like: a foot, ten inches, an inch, a metre, a decimetre, a centimetre; read as the wall
   *  beside it; exchanged with it. */
  readonly kind?: SlipKind;
}

export type SlipKind =
  | 'foot'
  | 'tenInches'
  | 'inch'
  | 'metre'
  | 'decimetre'
  | 'centimetre'
  | 'asNeighbour'
  | 'exchanged';

export interface AdjustedCorner {
  readonly name: string;
  /** Inner angle. */
  readonly angleDeg: number;
  /** By how much the corner may be out in the plane, one standard deviation, nothing held fast; null where nothing tells. */
  readonly sd: Ticks | null;
  /** By how much `wall`, the shorter at this corner, leans from square to the other over its length `over`: positive where the
   *  inner angle is too wide. Null where the corner is not meant to be square. */
  readonly lean: { readonly wall: string; readonly by: Ticks; readonly over: Ticks } | null;
}
