import { type Point, unitAlong } from '../../geometry/index.ts';
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
  const walls = edges.filter((one) => hasFace(one) && !obstacles.some((thing) => thing.edges.includes(one)));
  const [first] = walls
    .flatMap((wall) => {
      const far = crossing(at, [side * ux, side * uy], wall);
      return far !== undefined && far <= most ? [{ end: wall.name, distance: Math.round(far) }] : [];
    })
    .sort((a, b) => a.distance - b.distance);
  return first;
}

/** How far ahead of a point an edge is met; undefined where it is not. */
function crossing([x, y]: Point, [ux, uy]: Point, { from, to }: RoomEdge): number | undefined {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const across = ux * dy - uy * dx;
  if (across === 0) return undefined;
  const [fx, fy] = [from[0] - x, from[1] - y];
  const far = (fx * dy - fy * dx) / across;
  const part = (fx * uy - fy * ux) / across;
  return far >= 0 && part >= 0 && part <= 1 ? far : undefined;
}
