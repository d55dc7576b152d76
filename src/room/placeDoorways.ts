import type { SurfaceSpec } from '../job/Job.ts';
import type { Problem } from '../job/Problem.ts';
import { TICKS_PER_INCH } from '../measure/index.ts';
import type { Complain } from './complainer.ts';
import { beyondWall, inCurve, overlapping, unknownWall } from './openingProblems.ts';
import { type PlacedDoorway, placeDoorway } from './placeDoorway.ts';
import { bowAt, type WallLine } from './wallLine.ts';

/** A jamb, a saddle and the line of a closed door are straight: 1/8 in of bend is left to gap and casing; common practice, no source. */
const MOST_BEND = TICKS_PER_INCH / 8;

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
    const bend = bendOver(walls[at]!, placed);
    if (over > 0) problems.push(beyondWall(spec, length, over, complain));
    else if (bend > MOST_BEND) problems.push(inCurve(spec, bend, MOST_BEND, complain));
    else doors.push(placed);
  }
  return { doors, problems: [...problems, ...overlapping(doors, complain)] };
}

/** How far a wall's face bends off the straight line between both ends of a doorway, at its middle. */
function bendOver(wall: WallLine, { from, to }: PlacedDoorway): number {
  const [start, middle, end] = [from, (from + to) / 2, to].map((u) => bowAt(wall, u)) as [
    number,
    number,
    number,
  ];
  return Math.abs(middle - (start + end) / 2);
}
