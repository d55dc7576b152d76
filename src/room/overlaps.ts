import { intersect, type Shape, subtract } from '../geometry/index.ts';
import type { ObstacleSpec, SurfaceSpec } from '../job/Job.ts';
import type { Problem } from '../job/Problem.ts';
import type { Complain } from './complainer.ts';
import { deepestPart } from './deepestPart.ts';
import { makeObstacle } from './makeObstacle.ts';
import type { Obstacle } from './Room.ts';
import type { WallLine } from './wallLine.ts';

const shapeOf = ({ ring }: Obstacle): Shape[] => [{ outer: ring, holes: [] }];

/** A pipe may come up within a cabinet or a flange; two cabinets are never one in the other, and nothing stands on a flange. */
function mayHold(outer: Obstacle, inner: Obstacle): boolean {
  if (outer.facts.meets === inner.facts.meets) return false;
  return outer.facts.meets !== 'flange' || inner.facts.meets === 'pipe';
}

const stands = (inner: Obstacle, outer: Obstacle) =>
  mayHold(outer, inner) && !deepestPart(subtract(shapeOf(inner), shapeOf(outer)));

/** How deep two obstacles lie in each other, where neither stands within the other on purpose. */
function lapOf(one: Obstacle, other: Obstacle): number | undefined {
  const lap = deepestPart(intersect(shapeOf(one), shapeOf(other)));
  return lap && !stands(one, other) && !stands(other, one) ? lap.deep : undefined;
}

/** The same rectangle with its two lengths the other way round. */
function swapped({ shape, ...rest }: ObstacleSpec): ObstacleSpec | undefined {
  if (shape.kind !== 'rectangle') return undefined;
  return { ...rest, shape: { ...shape, along: shape.out, out: shape.along } };
}

/** Whether an obstacle keeps clear of the other once its two lengths are swapped. */
function clearsSwapped(spec: ObstacleSpec, other: Obstacle, walls: readonly WallLine[]): boolean {
  const turned = swapped(spec);
  const made = turned && makeObstacle(turned, walls);
  return made !== undefined && lapOf(made, other) === undefined;
}

/** Obstacles that lie in each other by more than taping explains; each pair is told at the one written later. */
export function overlaps(
  surface: SurfaceSpec,
  walls: readonly WallLine[],
  placed: readonly Obstacle[],
  complain: Complain,
): Problem[] {
  const specOf = ({ name }: Obstacle) => surface.obstacles.find((spec) => spec.name === name)!;
  return placed.flatMap((one, i) =>
    placed.slice(0, i).flatMap((other) => {
      const deep = lapOf(one, other);
      if (deep === undefined) return [];
      const swap = [one, other].find((it) => clearsSwapped(specOf(it), it === one ? other : one, walls));
      const figures = { name: one.name, other: other.name, swap: swap ? swap.name : 'none' };
      return [complain('obstaclesOverlap', ['obstacles', one.name], complain.text(deep), figures)];
    }),
  );
}
