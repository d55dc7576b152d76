import { circleRing, outsetByEdge, type Point, type Ring, ringArea } from '../geometry/index.ts';
import type { EdgeFacts, ObstacleSpec } from '../job/Job.ts';
import type { Ticks } from '../measure/index.ts';
import type { Obstacle, RoomEdge } from './Room.ts';
import { bendsOf, edgeArc, lineBetween, pointFromWalls, pointOnWall, type WallLine } from './wallLine.ts';

type Named = (wall: string) => WallLine | undefined;

const rounded = ([x, y]: Point): Point => [Math.round(x) + 0, Math.round(y) + 0];

/** Near corner at the two distances; the sides lead away from both walls, along the first and square to it. */
function rectangleRing(
  shape: Extract<ObstacleSpec['shape'], { kind: 'rectangle' }>,
  wall: Named,
): Ring | undefined {
  const [first, second] = [wall(shape.from[0].wall), wall(shape.from[1].wall)];
  const near =
    first && second && pointFromWalls(first, shape.from[0].distance, second, shape.from[1].distance);
  if (!near) return undefined;
  const away = first.along[0] * second.into[0] + first.along[1] * second.into[1] > 0 ? 1 : -1;
  const at = (u: number, v: number) =>
    rounded([
      near[0] + u * away * first.along[0] + v * first.into[0],
      near[1] + u * away * first.along[1] + v * first.into[1],
    ]);
  return [at(0, 0), at(shape.along, 0), at(shape.along, shape.out), at(0, shape.out)];
}

function polygonRing(
  shape: Extract<ObstacleSpec['shape'], { kind: 'polygon' }>,
  wall: Named,
): Ring | undefined {
  const [first, second] = [wall(shape.walls[0]), wall(shape.walls[1])];
  if (!first || !second) return undefined;
  const points = shape.points.map(([a, b]) => pointFromWalls(first, a, second, b));
  return points.every((point) => point !== undefined) ? points.map(rounded) : undefined;
}

/**
 * The sides of an obstacle, counter-clockwise. The first point stays the first, so that its first edge begins at its near corner;
 * `rises` belong to the sides in the order given.
 */
function sidesBetween(name: string, made: Ring, rises: readonly Ticks[] = []): WallLine[] {
  const turned = ringArea(made) < 0;
  const ring = turned ? [made[0]!, ...made.slice(1).reverse()] : made;
  const last = ring.length - 1;
  return ring.map((from, i) =>
    lineBetween(`${name}:${i + 1}`, from, ring[(i + 1) % ring.length]!, rises[turned ? last - i : i] ?? 0),
  );
}

/** The edges of a side: itself, or the chords of its arc, whose bulge out of the obstacle is one into the room. */
function edgesOfSide(side: WallLine, name: string, facts: EdgeFacts): RoomEdge[] {
  const bends = bendsOf(side, 0, side.length).map((u) => pointOnWall(side, u, 0));
  const points = [side.from, ...bends, side.to];
  const arc = edgeArc(side);
  const seen: RoomEdge['arc'] = arc && { ...arc, sign: arc.sign === 1 ? -1 : 1 };
  return points.slice(1).map((to, i): RoomEdge => {
    const id = i > 0 ? `${side.id}.${i + 1}` : side.id;
    return { id, name, ...facts, from: points[i]!, to, ...(seen && { arc: seen }) };
  });
}

function sided(spec: ObstacleSpec, facts: EdgeFacts, sides: readonly WallLine[]): Obstacle {
  const edges = sides.flatMap((side) => edgesOfSide(side, spec.name, facts));
  const ring = edges.map(({ from }) => from);
  return {
    name: spec.name,
    facts,
    ring,
    cleared: outsetByEdge(
      ring,
      ring.map(() => facts.gap),
    ),
    edges,
  };
}

/** A circle stays a circle beside its polygon; it has no edges, since nothing is set out or started from it. */
function round(spec: ObstacleSpec, facts: EdgeFacts, diameter: number, centre: Point): Obstacle {
  // A half tick goes to the circle, since a hole may be too wide but not too narrow.
  const radius = Math.ceil(diameter / 2);
  const clearRadius = radius + facts.gap;
  return {
    name: spec.name,
    facts,
    ring: circleRing(centre, radius),
    cleared: circleRing(centre, clearRadius),
    circle: { centre, radius, clearRadius },
    edges: [],
  };
}

/** The sides of an obstacle that is no circle, counter-clockwise; undefined where its two walls run parallel. */
export function obstacleSides(
  { name, shape }: ObstacleSpec,
  walls: readonly WallLine[],
): WallLine[] | undefined {
  const wall: Named = (id) => walls.find((one) => one.id === id);
  if (shape.kind === 'circle') return undefined;
  if (shape.kind === 'polygon') {
    const ring = polygonRing(shape, wall);
    return ring && sidesBetween(name, ring, shape.rises);
  }
  const ring = rectangleRing(shape, wall);
  return ring && sidesBetween(name, ring);
}

/** An obstacle in the room's frame; undefined where the two walls it was measured from run parallel. */
export function makeObstacle(spec: ObstacleSpec, walls: readonly WallLine[]): Obstacle | undefined {
  const wall: Named = (id) => walls.find((one) => one.id === id);
  const { meets, gap, gapMax, touch, seen, shape } = spec;
  const facts: EdgeFacts = { meets, gap, gapMax, touch, seen };
  if (shape.kind !== 'circle') {
    const sides = obstacleSides(spec, walls);
    return sides && sided(spec, facts, sides);
  }
  const [first, second] = [wall(shape.from[0].wall), wall(shape.from[1].wall)];
  const centre =
    first && second && pointFromWalls(first, shape.from[0].distance, second, shape.from[1].distance);
  return centre && round(spec, facts, shape.diameter, rounded(centre));
}
