import type { SurfaceSpec } from '../job/Job.ts';
import type { Problem } from '../job/Problem.ts';
import type { Complain } from './complainer.ts';
import { beyondWall, overlapping, unknownWall } from './openingProblems.ts';
import { type PlacedDoorway, placeDoorway } from './placeDoorway.ts';
import type { WallLine } from './wallLine.ts';

/** All doorways on their walls, or what is wrong with them. */
export function placeDoorways(
  surface: SurfaceSpec,
  walls: readonly WallLine[],
  complain: Complain,
): { readonly doors: readonly PlacedDoorway[]; readonly problems: readonly Problem[] } {
  const doors: PlacedDoorway[] = [];
  const problems: Problem[] = [];
  for (const spec of surface.doorways) {
    const at = walls.findIndex(({ id }) => id === spec.wall);
    const ends = [surface.walls[at]?.from, surface.walls[at]?.to];
    if (at < 0 || !ends.includes(spec.fromCorner)) {
      problems.push(unknownWall(['doorways', spec.name], spec.wall, walls, complain));
      continue;
    }
    if (!(spec.clear > 0)) {
      problems.push(
        complain('zeroLength', ['doorways', spec.name], complain.text(spec.clear), { id: spec.name }),
      );
      continue;
    }
    const { length } = walls[at]!;
    const { placed, over } = placeDoorway(spec, { length, startsAt: ends[0]! });
    if (over > 0) problems.push(beyondWall(spec, length, over, complain));
    else doors.push(placed);
  }
  return { doors, problems: [...problems, ...overlapping(doors, complain)] };
}
