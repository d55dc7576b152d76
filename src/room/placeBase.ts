import { lineThroughShape, type Point } from '../geometry/index.ts';
import type { BasePlace, BaseSpec, FromWall, SurfaceSpec } from '../job/Job.ts';
import type { Problem } from '../job/Problem.ts';
import type { System } from '../measure/index.ts';
import { complainer } from './complainer.ts';
import { onFloor } from './onFloor.ts';
import type { PlacedBase, PlacedJoint } from './PlacedBase.ts';
import { placeReadings } from './placeReadings.ts';
import type { Room } from './Room.ts';
import { pointFromWalls, type WallLine, wallLines } from './wallLine.ts';

/** What was found on the base of one floor, and what of it does not lie on the floor. */
export interface BasePlacing {
  readonly base: PlacedBase;
  readonly problems: readonly Problem[];
}

const rounded = ([x, y]: Point): Point => [Math.round(x) + 0, Math.round(y) + 0];

function pointsOf(place: BasePlace, walls: readonly WallLine[]): readonly Point[] {
  const [first, second] = place.walls.map((name) => walls.find(({ id }) => id === name));
  if (!first || !second) return [];
  return place.points.flatMap(([a, b]) => {
    const at = pointFromWalls(first, a, second, b);
    return at ? [rounded(at)] : [];
  });
}

/** The longest stretch of the line at a distance from a wall that lies on the floor. */
function jointLine(joint: FromWall, walls: readonly WallLine[], room: Room): PlacedJoint | undefined {
  const line = walls.find(({ id }) => id === joint.wall);
  if (!line) return undefined;
  const { from, along, into, length } = line;
  const start = rounded([from[0] + into[0] * joint.distance, from[1] + into[1] * joint.distance]);
  const step = rounded([along[0] * length, along[1] * length]);
  const spans = lineThroughShape({ outer: room.outline, holes: [] }, start, step);
  const longest = [...spans].sort((a, b) => b.to - b.from - (a.to - a.from))[0];
  if (!longest) return undefined;
  const at = (t: number): Point => rounded([start[0] + step[0] * t, start[1] + step[1] * t]);
  return { ...joint, from: at(longest.from), to: at(longest.to) };
}

/**
 * Cracks, hollow spots, joints and readings of the base that lie on one floor, in the room's frame, in ticks. What is told of
 * another floor, or of a wall that this floor does not have, is left out; what lies outside the outline is a problem.
 */
export function placeBase(base: BaseSpec, surface: SurfaceSpec, room: Room, system: System): BasePlacing {
  const complain = complainer('base', system);
  const walls = wallLines(surface, room.corners);
  const off = (kind: string, where: string, names: readonly string[]) =>
    complain('baseOffFloor', [kind, where], where, {
      name: where,
      floor: surface.name,
      walls: names.join(', '),
    });
  const placed = (place: BasePlace | undefined) =>
    place?.surface === surface.name ? pointsOf(place, walls) : [];
  const lies = (points: readonly Point[]) => points.every((point) => onFloor(point, room.outline));

  const cracks = base.cracks.map(({ where, moving, line }) => ({
    where,
    moving,
    line: placed(line),
    place: line,
  }));
  const hollow = (base.hollow ?? []).map(({ at, ...spot }) => ({ ...spot, points: placed(at), place: at }));
  const own = base.joints.filter(({ wall }) => walls.some(({ id }) => id === wall));
  const joints = own.map((joint) => ({ joint, line: jointLine(joint, walls, room) }));
  const grid =
    base.grid?.surface === surface.name
      ? placeReadings(base.grid, walls, room.outline, complain)
      : { readings: [], problems: [] };
  return {
    base: {
      cracks: cracks.filter(({ line }) => line.length > 0).map(({ place: _, ...crack }) => crack),
      hollow: hollow.flatMap(({ points, place: _, ...spot }) => points.map((at) => ({ ...spot, at }))),
      joints: joints.flatMap(({ line }) => line ?? []),
      readings: grid.readings,
    },
    problems: [
      ...cracks
        .filter(({ line }) => !lies(line))
        .map(({ where, place }) => off('cracks', where, place!.walls)),
      ...hollow
        .filter(({ points }) => !lies(points))
        .map(({ where, place }) => off('hollow', where, place!.walls)),
      ...joints
        .filter(({ line }) => !line)
        .map(({ joint }) => off('joints', `from ${joint.wall}`, [joint.wall])),
      ...grid.problems,
    ],
  };
}
