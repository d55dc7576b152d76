import { circleRing, outsetByEdge, type Point, type Ring, ringArea } from '../geometry/index.ts';
import type { EdgeFacts, ObstacleSpec } from '../job/Job.ts';
import type { Obstacle, RoomEdge } from './Room.ts';
import { pointFromWalls, type WallLine } from './wallLine.ts';

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

/** The first point stays the first, so that an obstacle's first edge begins at its near corner. */
const counterClockwise = (ring: Ring): Ring =>
  ringArea(ring) < 0 ? [ring[0]!, ...ring.slice(1).reverse()] : ring;

function straightSided(spec: ObstacleSpec, facts: EdgeFacts, made: Ring): Obstacle {
  const ring = counterClockwise(made);
  const edges = ring.map((from, i): RoomEdge => {
    return { id: `${spec.name}:${i + 1}`, name: spec.name, ...facts, from, to: ring[(i + 1) % ring.length]! };
  });
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

/** An obstacle in the room's frame; undefined where the two walls it was measured from run parallel. */
export function makeObstacle(spec: ObstacleSpec, walls: readonly WallLine[]): Obstacle | undefined {
  const wall: Named = (id) => walls.find((one) => one.id === id);
  const { meets, gap, gapMax, touch, seen, shape } = spec;
  const facts: EdgeFacts = { meets, gap, gapMax, touch, seen };
  if (shape.kind !== 'circle') {
    const ring = shape.kind === 'rectangle' ? rectangleRing(shape, wall) : polygonRing(shape, wall);
    return ring && straightSided(spec, facts, ring);
  }
  const [first, second] = [wall(shape.from[0].wall), wall(shape.from[1].wall)];
  const centre =
    first && second && pointFromWalls(first, shape.from[0].distance, second, shape.from[1].distance);
  return centre && round(spec, facts, shape.diameter, rounded(centre));
}
