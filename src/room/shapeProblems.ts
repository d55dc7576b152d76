import { ringArea, selfCrossings } from '../geometry/index.ts';
import type { SurfaceSpec } from '../job/Job.ts';
import type { Problem } from '../job/Problem.ts';
import type { Complain } from './complainer.ts';
import type { AdjustedCorners } from './makeAdjustment.ts';
import { misclosureLimit, mostAngleMisclosureDeg } from './misclosureLimit.ts';
import type { WallLine } from './wallLine.ts';

/** Angles that close no figure, where nothing but them gives the shape. */
function angleProblem(surface: SurfaceSpec, made: AdjustedCorners, complain: Complain): Problem[] {
  if (Math.abs(made.angleMisclosureDeg) <= mostAngleMisclosureDeg) return [];
  const sum = surface.corners.reduce((total, { angleDeg }) => total + angleDeg, 0);
  const figures = { corners: surface.corners.length, expected: sum - made.angleMisclosureDeg };
  return [complain('angles', ['angles'], String(sum), figures)];
}

/** Readings that contradict each other by more than tape work can be out. */
function misclosureProblem(surface: SurfaceSpec, made: AdjustedCorners, complain: Complain): Problem[] {
  const { misclosure, misclosureAt, perimeter, readings, redundancy } = made.adjustment;
  const limit = misclosureLimit(perimeter);
  if (misclosure <= limit) return [];
  const reading = readings.find(({ id }) => id === misclosureAt);
  const path = reading
    ? [reading.kind === 'wall' ? 'walls' : 'diagonals', reading.id]
    : ['walls', surface.walls.at(-1)!.id];
  const figures = {
    at: misclosureAt,
    limit: complain.text(limit),
    walk: complain.text(perimeter),
    redundancy,
    what: reading?.kind ?? 'corner',
  };
  return [complain('misclosure', path, complain.text(misclosure), figures)];
}

function crossingWalls(surface: SurfaceSpec, made: AdjustedCorners, complain: Complain): Problem[] {
  const crossed = selfCrossings(made.corners).map(({ i, j }) => {
    const [one, other] = [surface.walls[i]!.id, surface.walls[j]!.id];
    return complain('crossing', ['walls', other], other, { wall: other, crosses: one });
  });
  if (crossed.length > 0 || ringArea(made.corners) > 0) return crossed;
  return [complain('insideOut', ['walls'], surface.walls.map(({ id }) => id).join(', '))];
}

/** What is wrong with the room that the readings give. A shape that is refused for one reason is not asked for more. */
export function shapeProblems(surface: SurfaceSpec, made: AdjustedCorners, complain: Complain): Problem[] {
  for (const find of [angleProblem, misclosureProblem, crossingWalls]) {
    const found = find(surface, made, complain);
    if (found.length > 0) return found;
  }
  return [];
}

/** Walls whose middle stands off the line between their ends by more than half of it: more than half a circle. */
export function tooBent(walls: readonly WallLine[], complain: Complain): Problem[] {
  return walls.flatMap(({ id, length, rise }) => {
    if (Math.abs(rise) <= length / 2 + 1) return [];
    const figures = { wall: id, limit: complain.text(length / 2) };
    return [complain('middleTooLarge', ['walls', id, 'middle'], complain.text(Math.abs(rise)), figures)];
  });
}
