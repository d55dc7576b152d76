import type { Job, SurfaceSpec } from '../../src/job/Job.ts';
import type { Layout } from '../../src/layout/Layout.ts';
import { makeLayout } from '../../src/layout/makeLayout.ts';
import type { Wishes } from '../../src/layout/readyFloor.ts';
import { withMovement } from '../../src/packet/withMovement.ts';
import { makeRoom } from '../../src/room/makeRoom.ts';

type PlacedBase = Parameters<typeof withMovement>[2];

const QUIET: PlacedBase = { cracks: [], hollow: [], joints: [], readings: [] };

/** A floor laid with its soft joints, over a base in which nothing moves unless told. */
export function laidInBays(job: Job, surface: SurfaceSpec, base: PlacedBase = QUIET): Layout {
  const made = makeRoom(surface, job.print.system);
  if ('problems' in made) throw new Error(JSON.stringify(made.problems));
  const lay = (wishes: Wishes = {}) => {
    const layout = makeLayout(job, surface, made.room, wishes);
    if ('problems' in layout) throw new Error(JSON.stringify(layout.problems));
    return layout;
  };
  return withMovement(job, surface, base, lay(), lay);
}
