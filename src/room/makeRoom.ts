import type { SurfaceSpec } from '../job/Job.ts';
import type { Problem } from '../job/Problem.ts';
import type { System } from '../measure/index.ts';
import { complainer } from './complainer.ts';
import { foldStrips } from './foldStrips.ts';
import { makeAdjustment } from './makeAdjustment.ts';
import { makeFalls } from './makeFalls.ts';
import { makeField } from './makeField.ts';
import { makeOpening, makeOutline } from './makeOutline.ts';
import { crossingRecess } from './openingProblems.ts';
import { placeDoorways } from './placeDoorways.ts';
import { placeObstacles } from './placeObstacles.ts';
import type { Room } from './Room.ts';
import { readingProblems } from './readingProblems.ts';
import { shapeProblems, tooBent } from './shapeProblems.ts';
import { wallLines } from './wallLine.ts';

export type RoomOrProblems = { readonly room: Room } | { readonly problems: readonly Problem[] };

/**
 * The room that a surface's readings give: its corners adjusted, its outline with doorways, its obstacles, and the field
 * where tile may lie. All lengths in ticks, in the room's frame: first corner at the origin, first wall along +x.
 * Readings that contradict each other or make no room, doorways and obstacles that do not fit it, and a field that
 * holds nothing are problems; `system` is the one in which their lengths are written.
 */
export function makeRoom(surface: SurfaceSpec, system: System = 'inches'): RoomOrProblems {
  const complain = complainer(surface.name, system);
  const misread = readingProblems(surface, complain);
  if (misread.length > 0) return { problems: misread };
  const made = makeAdjustment(surface, system);
  const misshapen = shapeProblems(surface, made, complain);
  if (misshapen.length > 0) return { problems: misshapen };

  const { corners, adjustment } = made;
  const walls = wallLines(surface, corners);
  const bent = tooBent(walls, complain);
  if (bent.length > 0) return { problems: bent };
  const { doors, problems: misplacedDoors } = placeDoorways(surface, walls, complain);
  const { outline, edges } = makeOutline(surface, walls, doors);
  // Recesses are looked at once every doorway has its place; obstacles need not wait for that.
  const crossing = misplacedDoors.length > 0 ? [] : crossingRecess(outline, edges, complain);
  const within = misplacedDoors.length + crossing.length > 0 ? corners : outline;
  const { obstacles: placed, problems: misplaced } = placeObstacles(surface, walls, within, complain);
  const { falls, problems: blocked } = makeFalls(surface, { walls, corners, obstacles: placed }, complain);
  const problems = [...misplacedDoors, ...crossing, ...misplaced, ...blocked];
  if (problems.length > 0) return { problems };

  const obstacles = [...placed, ...foldStrips(falls, surface.falls?.joint ?? 0)];
  const field = makeField(outline, edges, obstacles);
  if (field.length === 0) return { problems: [complain('emptyField', [], surface.name)] };
  const openings = doors.map((door) => makeOpening(walls.find(({ id }) => id === door.spec.wall)!, door));
  return {
    room: {
      surface: surface.name,
      corners,
      adjustment,
      outline,
      edges,
      obstacles,
      field,
      openings,
      ...(falls && { falls }),
    },
  };
}
