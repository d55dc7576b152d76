import {
  distancePointSegment,
  type Point,
  poleOfInaccessibility,
  type Ring,
  subtract,
} from '../geometry/index.ts';
import { TICKS_PER_INCH, type Ticks } from '../measure/index.ts';
import type { WallLine } from './wallLine.ts';

/** As far as this an obstacle may lap a wall: the tape's slack and the room's own correction. */
const LAP: Ticks = TICKS_PER_INCH;

/** How near the deepest point is looked for, in ticks. */
const PRECISION = 64;

/** Where an obstacle stands through a wall: which one, and how deep in it. */
export interface Through {
  readonly wall: string;
  readonly deep: Ticks;
}

/**
 * The wall that an obstacle stands through, more than an inch deep at its deepest; undefined where it keeps to the
 * room or laps a wall by less. What is outside is as deep as twice the largest circle in it.
 */
export function throughWall(ring: Ring, outline: Ring, walls: readonly WallLine[]): Through | undefined {
  const outside = subtract([{ outer: ring, holes: [] }], [{ outer: outline, holes: [] }]);
  const found = outside.map((shape): Through => {
    const at = poleOfInaccessibility(shape, PRECISION);
    const sides = [shape.outer, ...shape.holes].flatMap((one) => edgesOf(one));
    const deep = 2 * Math.min(...sides.map(([a, b]) => distancePointSegment(at, a, b)));
    return { wall: nearestWall(at, walls), deep };
  });
  const [worst] = found.sort((a, b) => b.deep - a.deep);
  return worst && worst.deep > LAP + 2 * PRECISION ? worst : undefined;
}

function edgesOf(ring: Ring): (readonly [Point, Point])[] {
  return ring.map((point, i) => [point, ring[(i + 1) % ring.length]!]);
}

function nearestWall(at: Point, walls: readonly WallLine[]): string {
  const far = ({ from, to }: WallLine) => distancePointSegment(at, from, to);
  return walls.reduce((best, one) => (far(one) < far(best) ? one : best)).id;
}
