import { type Point, segmentIntersection, unitAlong } from '../../geometry/index.ts';
import type { Ticks } from '../../measure/index.ts';
import type { RoomEdge } from '../../room/Room.ts';
import type { TapeEnd } from '../Layout.ts';
import type { Faces } from './Faces.ts';
import { hasFace } from './hasFace.ts';

/**
 * The wall that a tape along the side of what stands in the room is butted against, to one side of a point of it: where the side goes
 * on into the wall, or ends nearer to it than `within`. Undefined along a wall, and where no wall is so near.
 */
export function wallAhead(
  edge: RoomEdge,
  at: Point,
  side: -1 | 1,
  { edges, obstacles }: Faces,
  within: Ticks,
): TapeEnd | undefined {
  if (!obstacles.some((one) => one.edges.includes(edge))) return undefined;
  const [ux, uy] = unitAlong(edge.from, edge.to);
  const [ex, ey] = side < 0 ? edge.from : edge.to;
  const most = Math.hypot(ex - at[0], ey - at[1]) + within;
  const farthest: Point = [at[0] + side * ux * most, at[1] + side * uy * most];
  const walls = edges.filter((one) => hasFace(one) && !obstacles.some((thing) => thing.edges.includes(one)));
  const [first] = walls
    .flatMap((wall) => {
      const met = segmentIntersection(at, farthest, wall.from, wall.to);
      return met
        ? [{ end: wall.name, distance: Math.round(Math.hypot(met[0] - at[0], met[1] - at[1])) }]
        : [];
    })
    .sort((a, b) => a.distance - b.distance);
  return first;
}
