import type { Job, SurfaceSpec } from '../../src/job/Job.ts';
import type { Layout } from '../../src/layout/Layout.ts';
import { makeLayout } from '../../src/layout/makeLayout.ts';
import { makeRoom } from '../../src/room/makeRoom.ts';
import type { Room } from '../../src/room/Room.ts';

type Spec = Pick<Job, 'tiles' | 'joint' | 'print'>;
type Made = { readonly room: Room; readonly layout: Layout };

/** What was laid out already: several tests look at one room, and its search takes longer than what they ask of it. */
const known = new WeakMap<SurfaceSpec, readonly [job: Spec, made: Made]>();

/** Room and layout of a surface; throws where either is refused, with the codes of the problems. */
export function layOut(job: Spec, surface: SurfaceSpec): Made {
  const before = known.get(surface);
  if (before?.[0] === job) return before[1];
  const made = laidOut(job, surface);
  known.set(surface, [job, made]);
  return made;
}

function laidOut(job: Spec, surface: SurfaceSpec): Made {
  const made = makeRoom(surface, job.print.system);
  if ('problems' in made)
    throw new Error(`room: ${made.problems.map(({ code, found }) => `${code} ${found}`)}`);
  const layout = makeLayout(job, surface, made.room);
  if ('problems' in layout)
    throw new Error(`layout: ${layout.problems.map(({ code, found }) => `${code} ${found}`)}`);
  return { room: made.room, layout };
}
