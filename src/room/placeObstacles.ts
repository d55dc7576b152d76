import { intersect, isSimple, type Ring, ringArea, shapeArea } from '../geometry/index.ts';
import type { ObstacleSpec, SurfaceSpec } from '../job/Job.ts';
import type { Problem } from '../job/Problem.ts';
import type { Complain } from './complainer.ts';
import { makeObstacle, obstacleSides } from './makeObstacle.ts';
import { unknownWall } from './openingProblems.ts';
import { overlaps } from './overlaps.ts';
import type { Obstacle } from './Room.ts';
import { tooBent } from './shapeProblems.ts';
import { throughWall } from './throughWall.ts';
import type { WallLine } from './wallLine.ts';

/** An obstacle of which less than this share lies in the room was measured from the wrong wall. */
const leastInside = 0.5;

const wallsOf = ({ shape }: ObstacleSpec) =>
  shape.kind === 'polygon' ? shape.walls : shape.from.map(({ wall }) => wall);

function insideShare(ring: Ring, outline: Ring): number {
  const inside = intersect([{ outer: ring, holes: [] }], [{ outer: outline, holes: [] }]);
  return inside.reduce((sum, shape) => sum + shapeArea(shape), 0) / ringArea(ring);
}

function oneObstacle(
  spec: ObstacleSpec,
  walls: readonly WallLine[],
  outline: Ring,
  complain: Complain,
): Obstacle | Problem {
  const path = ['obstacles', spec.name];
  const figures = { name: spec.name, walls: wallsOf(spec).join(', ') };
  const unknown = wallsOf(spec).find((id) => !walls.some((wall) => wall.id === id));
  if (unknown !== undefined) return unknownWall(path, unknown, walls, complain);
  const bent = tooBent(obstacleSides(spec, walls) ?? [], complain, () => [...path, 'polygon'])[0];
  if (bent) return bent;
  const made = makeObstacle(spec, walls);
  if (!made) return complain('parallelWalls', path, wallsOf(spec).join(', '), figures);
  if (!isSimple(made.ring) || !(ringArea(made.ring) > 0))
    return complain('obstacleShape', path, spec.name, figures);
  const share = insideShare(made.ring, outline);
  if (share < leastInside) return complain('obstacleOutside', path, `${Math.round(share * 100)} %`, figures);
  // Half of a round column or pipe may stand in the wall, told by its middle.
  const through = made.circle ? undefined : throughWall(made.ring, outline, walls);
  if (!through) return made;
  return complain('obstacleThrough', path, complain.text(through.deep), { ...figures, wall: through.wall });
}

/** All obstacles of a surface, or what is wrong with them. */
export function placeObstacles(
  surface: SurfaceSpec,
  walls: readonly WallLine[],
  outline: Ring,
  complain: Complain,
): { readonly obstacles: readonly Obstacle[]; readonly problems: readonly Problem[] } {
  const made = surface.obstacles.map((spec) => oneObstacle(spec, walls, outline, complain));
  const obstacles = made.filter((one): one is Obstacle => 'ring' in one);
  const misplaced = made.filter((one): one is Problem => 'code' in one);
  return { obstacles, problems: [...misplaced, ...overlaps(surface, walls, obstacles, complain)] };
}
