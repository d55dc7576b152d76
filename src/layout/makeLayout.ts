import type { SurfaceSpec } from '../job/Job.ts';
import type { Problem } from '../job/Problem.ts';
import type { Room } from '../room/Room.ts';
import type { Layout } from './Layout.ts';
import { layFloor } from './layFloor.ts';
import { type LayoutJob, readyFloor } from './readyFloor.ts';

/**
 * A surface's pattern laid on its room: where it starts, every piece with its name, what stays without tile,
 * the chalk lines and what is wrong with the layout. All in the pattern's frame, in ticks.
 */
export function makeLayout(
  job: LayoutJob,
  surface: SurfaceSpec,
  room: Room,
): Layout | { readonly problems: readonly Problem[] } {
  const floor = readyFloor(job, surface, room);
  return 'problems' in floor ? floor : layFloor(floor);
}
