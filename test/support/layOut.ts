import type { Job, SurfaceSpec } from '../../src/job/Job.ts';
import type { Layout } from '../../src/layout/Layout.ts';
import { makeLayout } from '../../src/layout/makeLayout.ts';
import { makeRoom } from '../../src/room/makeRoom.ts';
import type { Room } from '../../src/room/Room.ts';

/** Room and layout of a surface; throws where either is refused, with the codes of the problems. */
export function layOut(
  job: Pick<Job, 'tiles' | 'joint' | 'print'>,
  surface: SurfaceSpec,
): { room: Room; layout: Layout } {
  const made = makeRoom(surface, job.print.system);
  if ('problems' in made)
    throw new Error(`room: ${made.problems.map(({ code, found }) => `${code} ${found}`)}`);
  const layout = makeLayout(job, surface, made.room);
  if ('problems' in layout)
    throw new Error(`layout: ${layout.problems.map(({ code, found }) => `${code} ${found}`)}`);
  return { room: made.room, layout };
}
