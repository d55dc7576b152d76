import { distancePointSegment, type Point, type Ring, subtract } from '../geometry/index.ts';
import type { Ticks } from '../measure/index.ts';
import { deepestPart } from './deepestPart.ts';
import type { WallLine } from './wallLine.ts';

/** Where an obstacle stands through a wall: which one, and how deep in it. */
export interface Through {
  readonly wall: string;
  readonly deep: Ticks;
}

/**
 * The wall that an obstacle stands through, more than an inch deep at its deepest; undefined where it keeps to the
 * room or laps a wall by less.
 */
export function throughWall(ring: Ring, outline: Ring, walls: readonly WallLine[]): Through | undefined {
  const outside = subtract([{ outer: ring, holes: [] }], [{ outer: outline, holes: [] }]);
  const worst = deepestPart(outside);
  return worst && { wall: nearestWall(worst.at, walls), deep: worst.deep };
}

function nearestWall(at: Point, walls: readonly WallLine[]): string {
  const far = ({ from, to }: WallLine) => distancePointSegment(at, from, to);
  return walls.reduce((best, one) => (far(one) < far(best) ? one : best)).id;
}
