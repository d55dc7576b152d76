import type { Point, Ring, Shape } from '../geometry/index.ts';
import type { EdgeFacts } from '../job/Job.ts';
import type { Ticks } from '../measure/index.ts';

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
  /** Number of readings more than needed; 0 or less: no check possible. */
  readonly redundancy: number;
  /** Linear misclosure in ticks and the walk's length. */
  readonly misclosure: Ticks;
  readonly misclosureAt: string;
  readonly perimeter: Ticks;
  readonly readings: readonly AdjustedReading[];
  /** A diagonal that would help first, when no check is possible. */
  readonly measureNext?: string;
}

export interface AdjustedReading {
  /** `A-B` or a diagonal's `A-C`. */
  readonly id: string;
  readonly kind: 'wall' | 'diagonal';
  readonly read: readonly Ticks[];
  readonly mean: Ticks;
  readonly used: Ticks;
  /** used − mean. */
  readonly correction: Ticks;
}
