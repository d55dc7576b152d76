import type { SurfaceSpec } from '../job/Job.ts';
import type { Problem } from '../job/Problem.ts';
import type { Room } from '../room/Room.ts';
import type { Layout, Rival } from './Layout.ts';
import { layFloor } from './layFloor.ts';
import { type LayoutJob, readyFloor, type Wishes } from './readyFloor.ts';

/** What is asked of a layout beside what the job says. */
export interface Over extends Wishes {
  readonly instead?: Rival;
}

/**
 * A surface's pattern laid on its room: where it starts, every piece with its name, what stays without tile,
 * the chalk lines and what is wrong with the layout. All in the pattern's frame, in ticks.
 *
 * @param over What is asked of it beside the job: one of the `rivals` of a layout of this floor, to start there;
 * joints to lay wide, which go to the nearest joints of the start; soft joints that part border and inlays.
 */
export function makeLayout(
  job: LayoutJob,
  surface: SurfaceSpec,
  room: Room,
  { instead, ...wishes }: Over = {},
): Layout | { readonly problems: readonly Problem[] } {
  const floor = readyFloor(job, surface, room, wishes);
  return 'problems' in floor ? floor : layFloor(floor, instead);
}
