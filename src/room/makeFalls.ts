import { distancePoints, isConvex, type Point, type Ring, segmentsMeet } from '../geometry/index.ts';
import type { SurfaceSpec } from '../job/Job.ts';
import type { Problem } from '../job/Problem.ts';
import type { Complain } from './complainer.ts';
import type { Falls, Fold, OtherDrain, Plane } from './Falls.ts';
import type { Obstacle } from './Room.ts';
import type { WallLine } from './wallLine.ts';

/** What falls are made of: walls in the order walked, the corners between them, and what stands in the floor. */
export interface FallsGround {
  readonly walls: readonly WallLine[];
  readonly corners: Ring;
  readonly obstacles: readonly Obstacle[];
}

/**
 * The planes in which a floor falls to its drain, and the folds between them, in the room's frame; undefined where it lies level.
 * A fold that would leave the room on its way to its corner is a problem: from there no straight plane leads to the drain.
 */
export function makeFalls(
  { falls, corners: named, obstacles: specs }: SurfaceSpec,
  { walls, corners, obstacles }: FallsGround,
  complain: Complain,
): { readonly falls?: Falls; readonly problems: readonly Problem[] } {
  const drain = obstacles.find(({ name }) => name === falls?.to);
  if (!falls || !drain) return { problems: [] };
  const folds = walls.flatMap((wall, i): Fold[] => {
    const before = walls.at(i - 1)!;
    const both = falls.from.includes(wall.id) && falls.from.includes(before.id);
    return both ? [{ corner: named[i]!.name, from: beginOf(drain, wall.from), to: wall.from }] : [];
  });
  const blocked = folds.filter((fold) => leavesRoom(fold, corners));
  const problems = blocked.map(({ corner }) =>
    complain('foldBlocked', ['falls'], corner, { drain: drain.name, walls: falls.from.join(', ') }),
  );
  const planes = walls
    .filter(({ id }) => falls.from.includes(id))
    .map((wall) => ({ wall: wall.id, run: Math.round(runFrom(wall, drain)) }));
  const drains = specs.filter(({ meets, name }) => meets === 'drain' && name !== drain.name);
  const others = drains.map(({ name }): OtherDrain => {
    const other = obstacles.find((one) => one.name === name);
    return { name, ...(other && shareAt(other, planes, { walls, corners })) };
  });
  return {
    falls: {
      drain: drain.name,
      planes,
      folds,
      cut: falls.folds === 'cut',
      ...(others.length > 0 && { others }),
    },
    problems,
  };
}

/**
 * How high the fall stands where another drain begins, as part of its height at the walls. Each plane sinks evenly from its wall to the
 * drain, and of several the highest is the floor, which is so where all walls fall and none is seen round a corner.
 */
function shareAt(
  other: Obstacle,
  planes: readonly Plane[],
  { walls, corners }: Pick<FallsGround, 'walls' | 'corners'>,
): Pick<OtherDrain, 'share'> {
  const isSimple = planes.length === 1 || (planes.length === walls.length && isConvex(corners));
  if (!isSimple || planes.some(({ run }) => run === 0)) return {};
  const heights = planes.map(
    ({ wall, run }) => 1 - runFrom(walls.find(({ id }) => id === wall)!, other) / run,
  );
  return { share: Math.max(0, ...heights) };
}

/** Where a fold begins: in the middle of a round drain, at the corner of one with sides that lies nearest. */
function beginOf({ circle, ring }: Obstacle, corner: Point): Point {
  const nearer = (a: Point, b: Point) => (distancePoints(b, corner) < distancePoints(a, corner) ? b : a);
  return circle?.centre ?? ring.reduce(nearer);
}

/** From a wall square to the nearest point of the drain. */
function runFrom(wall: WallLine, { circle, ring }: Obstacle): number {
  if (circle) return Math.max(0, offWall(circle.centre, wall) - circle.radius);
  return Math.min(...ring.map((at) => offWall(at, wall)));
}

function offWall([x, y]: Point, { from, into }: WallLine): number {
  return Math.max(0, (x - from[0]) * into[0] + (y - from[1]) * into[1]);
}

/** Whether a fold meets a wall that does not end at its corner. */
function leavesRoom({ from, to }: Fold, corners: Ring): boolean {
  return corners.some((a, i) => {
    const b = corners[(i + 1) % corners.length]!;
    const ends = [a, b].some(([x, y]) => x === to[0] && y === to[1]);
    return !ends && segmentsMeet(from, to, a, b);
  });
}
