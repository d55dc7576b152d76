import type { SurfaceSpec } from '../job/Job.ts';
import type { Room } from '../room/Room.ts';
import { groundOf } from './groundOf.ts';
import type { Candidate, Layout } from './Layout.ts';
import { onJoints } from './movement/onJoints.ts';
import { layTiles } from './pieces/layTiles.ts';
import { relaid } from './relaid.ts';

/**
 * The pieces of a layout that begins somewhere else, with the same tile and joint and its wide joints as near as they can be, named from a crossing that moves with
 * it. Everything else of the layout given stays as it is: chalk lines, faults and what is left are those of the chosen start.
 */
export function layAnother(
  layout: Layout,
  surface: SurfaceSpec,
  room: Room,
  step: number,
  { origin }: Candidate,
): Layout {
  const ground = groundOf(layout, surface, room, step);
  const { pattern, wide = [] } = layout;
  return relaid(layout, ground, layTiles(ground, pattern, origin, onJoints(wide, pattern, origin)), origin);
}
