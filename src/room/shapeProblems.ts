import { ringArea, selfCrossings } from '../geometry/index.ts';
import type { SurfaceSpec } from '../job/Job.ts';
import type { Problem } from '../job/Problem.ts';
import type { Complain } from './complainer.ts';
import type { AdjustedCorners } from './makeAdjustment.ts';
import { misclosureLimit, mostAngleMisclosureDeg } from './misclosureLimit.ts';
import type { AdjustedReading } from './Room.ts';
import type { WallLine } from './wallLine.ts';

/** Angles that close no figure, where nothing but them gives the shape. */
function angleProblem(surface: SurfaceSpec, made: AdjustedCorners, complain: Complain): Problem[] {
  if (Math.abs(made.angleMisclosureDeg) <= mostAngleMisclosureDeg) return [];
  const sum = surface.corners.reduce((total, { angleDeg }) => total + angleDeg, 0);
  // Readings that fix a shape without checking it may fix two: angles tell which way a corner turns.
  const more = 1 - made.adjustment.redundancy;
  const figures = { corners: surface.corners.length, expected: sum - made.angleMisclosureDeg, more };
  return [complain('angles', ['angles'], String(sum), figures)];
}

/** Where a reading stands in the job file. */
const keys = { wall: 'walls', diagonal: 'diagonals', cornerCheck: 'corner checks', baseLine: 'base line' };

const placeOf = ({ kind, id }: AdjustedReading) => [keys[kind], id.replace(/:.*/, '')];

/** Readings that contradict each other by more than tape work can be out. */
function misclosureProblem(surface: SurfaceSpec, made: AdjustedCorners, complain: Complain): Problem[] {
  const { misclosure, misclosureAt, perimeter, readings, redundancy, suspects } = made.adjustment;
  const limit = misclosureLimit(perimeter);
  if (misclosure <= limit) return [];
  const exchanged = suspects.filter(({ kind }) => kind === 'exchanged');
  const first = exchanged[0]?.ids[0] ?? misclosureAt;
  const reading = readings.find(({ id }) => id === first);
  const path = reading ? placeOf(reading) : ['walls', surface.walls.at(-1)!.id];
  const figures = {
    at: misclosureAt,
    limit: complain.text(limit),
    walk: complain.text(perimeter),
    redundancy,
    what: readings.find(({ id }) => id === misclosureAt)?.kind ?? 'corner',
    verdict: exchanged.length > 0 ? 'exchanged' : (suspects[0]?.verdict ?? 'none'),
    pairs: exchanged.map(({ ids }) => ids.join(' – ')).join(', '),
    again: (suspects[0]?.ids ?? []).slice(0, 2).join(', '),
  };
  return [complain('misclosure', path, complain.text(misclosure), figures)];
}

/** A wall set aside where the walk needs it. */
function asideProblem(surface: SurfaceSpec, made: AdjustedCorners, complain: Complain): Problem[] {
  if (made.adjustment.method === 'leastSquares') return [];
  return surface.setAside
    .filter((id) => surface.walls.some((wall) => wall.id === id))
    .map((id) => complain('setAsideNeeded', ['set aside'], id, { id }));
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
  for (const find of [asideProblem, angleProblem, misclosureProblem, crossingWalls]) {
    const found = find(surface, made, complain);
    if (found.length > 0) return found;
  }
  return [];
}

/** Walls, or sides of an obstacle, whose middle stands off the line between their ends by more than half of it: more than half a circle. */
export function tooBent(
  walls: readonly WallLine[],
  complain: Complain,
  pathOf = (id: string): readonly string[] => ['walls', id, 'middle'],
): Problem[] {
  return walls.flatMap(({ id, length, rise }) => {
    if (Math.abs(rise) <= length / 2 + 1) return [];
    const figures = { wall: id, limit: complain.text(length / 2) };
    return [complain('middleTooLarge', pathOf(id), complain.text(Math.abs(rise)), figures)];
  });
}
