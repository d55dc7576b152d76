import { isSimple, type Ring, selfCrossings } from '../geometry/index.ts';
import type { DoorwaySpec } from '../job/Job.ts';
import type { Problem } from '../job/Problem.ts';
import type { Complain } from './complainer.ts';
import type { PlacedDoorway } from './placeDoorway.ts';
import type { RoomEdge } from './Room.ts';
import type { WallLine } from './wallLine.ts';

/** A doorway or an obstacle that is measured from a wall that the room does not have, or from another wall's corner. */
export function unknownWall(
  path: readonly string[],
  name: string,
  walls: readonly WallLine[],
  complain: Complain,
): Problem {
  const figures = { name, walls: walls.map(({ id }) => id).join(', '), near: 'no' };
  return complain('unknownWall', path, name, figures);
}

/** A doorway that its wall has no room for. */
export function beyondWall(spec: DoorwaySpec, length: number, over: number, complain: Complain): Problem {
  const figures = {
    name: spec.name,
    wall: spec.wall,
    length: complain.text(length),
    over: complain.text(over),
    corner: spec.fromCorner,
    from: complain.text(spec.from),
  };
  return complain('doorwayBeyondWall', ['doorways', spec.name], complain.text(spec.clear), figures);
}

/** Doorways of one wall of which one begins before the other has ended. */
export function overlapping(doors: readonly PlacedDoorway[], complain: Complain): Problem[] {
  return doors.flatMap((door, i) =>
    doors.slice(0, i).flatMap((other) => {
      const over = Math.min(door.to, other.to) - Math.max(door.from, other.from);
      if (door.spec.wall !== other.spec.wall || over <= 0) return [];
      const figures = { name: door.spec.name, other: other.spec.name, wall: door.spec.wall };
      return [complain('doorwaysOverlap', ['doorways', door.spec.name], complain.text(over), figures)];
    }),
  );
}

/** A doorway in a wall that bends more over its width than a straight door can follow. */
export function inCurve(spec: DoorwaySpec, bend: number, limit: number, complain: Complain): Problem {
  const figures = { name: spec.name, wall: spec.wall, limit: complain.text(limit) };
  return complain('doorwayInCurve', ['doorways', spec.name], complain.text(bend), figures);
}

/** Recesses that run into another wall or another doorway, and curved walls that run into anything. */
export function crossingRecess(outline: Ring, edges: readonly RoomEdge[], complain: Complain): Problem[] {
  if (isSimple(outline)) return [];
  const pairs = selfCrossings(outline).map(({ i, j }) => [edges[i]!, edges[j]!] as const);
  const isDoor = ({ id }: RoomEdge) => id.includes(':');
  const named = pairs.map(
    ([a, b]) => (isDoor(a) || (a.arc && !isDoor(b)) ? [a, b] : [b, a]) as [RoomEdge, RoomEdge],
  );
  const once = [...new Map(named.map((pair) => [pair.map(({ name }) => name).join(), pair])).values()];
  return once.map(([one, { name: crosses }]) => {
    const { name } = one;
    if (isDoor(one)) return complain('doorwayCrosses', ['doorways', name], name, { name, crosses });
    return complain('curveCrosses', ['walls', name], name, { wall: name, crosses });
  });
}
