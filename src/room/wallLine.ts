import { type Arc, arcOffset, arcPlaces, arcThrough, type Point, type Ring } from '../geometry/index.ts';
import type { SurfaceSpec } from '../job/Job.ts';
import { TICKS_PER_INCH } from '../measure/index.ts';
import type { EdgeArc } from './Room.ts';

/** A curved wall is drawn by straight lines that keep within 1/128 in of it. */
const FLAT_ENOUGH = Math.floor(TICKS_PER_INCH / 128);
/** Two walls' faces are measured from to within this many ticks, or after so many steps as near as they come. */
const NEAR = 0.25;
const STEPS = 60;

/** One adjusted wall from corner to corner, with the room on its left; a curved one by the chord of its arc. */
export interface WallLine {
  readonly id: string;
  readonly from: Point;
  readonly to: Point;
  readonly length: number;
  /** Unit vector in the direction walked. */
  readonly along: Point;
  /** Unit vector square to it, into the room. */
  readonly into: Point;
  /** How far its middle stands out of the room, and the arc that this makes; 0 and none where it is straight. */
  readonly rise: number;
  readonly arc?: Arc;
}

/** Lines of all walls, in the order walked. */
export function wallLines(surface: SurfaceSpec, corners: Ring): WallLine[] {
  return surface.walls.map(({ id, rise = 0 }, i) =>
    lineBetween(id, corners[i]!, corners[(i + 1) % corners.length]!, rise),
  );
}

/** The line from one point to another, its middle standing to the right by `rise`. */
export function lineBetween(id: string, from: Point, to: Point, rise: number): WallLine {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const along: Point = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
  const straight = { id, from, to, length, along, into: [-along[1], along[0]] as const, rise };
  return rise === 0 ? straight : { ...straight, arc: arcThrough(from, to, rise) };
}

/** The arc of a curved line, rounded to ticks, as its edges carry it. */
export function edgeArc({ arc, rise }: WallLine): EdgeArc | undefined {
  if (!arc) return undefined;
  const [x, y] = arc.centre;
  return {
    centre: [Math.round(x), Math.round(y)],
    radius: Math.round(arc.radius),
    sign: arc.sign,
    rise: Math.abs(rise),
  };
}

/** A point `u` along the wall from its first corner and `depth` behind its face there, rounded to ticks. */
export function pointOnWall(wall: WallLine, u: number, depth: number): Point {
  const behind = depth + bowAt(wall, u);
  const x = wall.from[0] + u * wall.along[0] - behind * wall.into[0];
  const y = wall.from[1] + u * wall.along[1] - behind * wall.into[1];
  return [Math.round(x) + 0, Math.round(y) + 0];
}

/** How far a wall's face stands out of the room, off the straight line between its ends, at a place along it. */
export function bowAt({ length, rise }: WallLine, u: number): number {
  return arcOffset(length, rise, u);
}

/** Places along a wall at which its face bends, between two of them; none where it is straight. */
export function bendsOf({ length, rise }: WallLine, from: number, to: number): readonly number[] {
  if (rise === 0) return [];
  return arcPlaces(length, rise, FLAT_ENOUGH).filter((u) => from < u && u < to);
}

/**
 * The point at two distances from two walls' faces, each square to its face there; undefined where the walls run
 * parallel. From a curved face the distance from its chord is put right until the face itself is that far away.
 */
export function pointFromWalls(a: WallLine, fromA: number, b: WallLine, fromB: number): Point | undefined {
  let [offA, offB] = [fromA, fromB];
  let found = pointFromChords(a, offA, b, offB);
  for (let step = 0; found && (a.arc || b.arc) && step < STEPS; step++) {
    const [missA, missB] = [fromA - awayFrom(a, found), fromB - awayFrom(b, found)];
    if (Math.max(Math.abs(missA), Math.abs(missB)) < NEAR) break;
    [offA, offB] = [offA + missA, offB + missB];
    found = pointFromChords(a, offA, b, offB);
  }
  return found;
}

/** How far a point stands off a wall's face, into the room. */
function awayFrom({ from, into, arc }: WallLine, [x, y]: Point): number {
  if (!arc) return (x - from[0]) * into[0] + (y - from[1]) * into[1];
  return arc.sign * (arc.radius - Math.hypot(x - arc.centre[0], y - arc.centre[1]));
}

function pointFromChords(a: WallLine, fromA: number, b: WallLine, fromB: number): Point | undefined {
  const turn = a.into[0] * b.into[1] - a.into[1] * b.into[0];
  // Less than about half a degree between two walls fixes no point.
  if (Math.abs(turn) < 0.01) return undefined;
  const offsetA = a.from[0] * a.into[0] + a.from[1] * a.into[1] + fromA;
  const offsetB = b.from[0] * b.into[0] + b.from[1] * b.into[1] + fromB;
  return [
    (offsetA * b.into[1] - offsetB * a.into[1]) / turn,
    (offsetB * a.into[0] - offsetA * b.into[0]) / turn,
  ];
}
