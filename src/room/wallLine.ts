import type { Point, Ring } from '../geometry/index.ts';
import type { SurfaceSpec } from '../job/Job.ts';

/** The straight line of one adjusted wall, with the room on its left. */
export interface WallLine {
  readonly id: string;
  readonly from: Point;
  readonly to: Point;
  readonly length: number;
  /** Unit vector in the direction walked. */
  readonly along: Point;
  /** Unit vector square to it, into the room. */
  readonly into: Point;
}

/** Lines of all walls, in the order walked. */
export function wallLines(surface: SurfaceSpec, corners: Ring): WallLine[] {
  return surface.walls.map(({ id }, i): WallLine => {
    const [from, to] = [corners[i]!, corners[(i + 1) % corners.length]!];
    const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
    const along: Point = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
    return { id, from, to, length, along, into: [-along[1], along[0]] };
  });
}

/** A point `u` along the wall from its first corner and `depth` behind its face, rounded to ticks. */
export function pointOnWall(wall: WallLine, u: number, depth: number): Point {
  const x = wall.from[0] + u * wall.along[0] - depth * wall.into[0];
  const y = wall.from[1] + u * wall.along[1] - depth * wall.into[1];
  return [Math.round(x) + 0, Math.round(y) + 0];
}

/** The point at two distances from two walls' faces, each square to its wall; undefined where the walls run parallel. */
export function pointFromWalls(a: WallLine, fromA: number, b: WallLine, fromB: number): Point | undefined {
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
