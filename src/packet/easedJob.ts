import type { Job, SurfaceSpec } from '../job/Job.ts';
import type { Candidate } from '../layout/Layout.ts';
import { makeLayout } from '../layout/makeLayout.ts';
import { TICKS_PER_INCH, type Ticks } from '../measure/index.ts';
import type { Room } from '../room/Room.ts';
import { EASED_JOINT } from '../trade/index.ts';

/** A surface with its room, as the layout takes them. */
export interface Placed {
  readonly surface: SurfaceSpec;
  readonly room: Room;
}

/** A job whose joint is eased, and the reason for it, which goes with the start of each surface. */
export interface Eased {
  readonly job: Job;
  readonly reason?: Candidate['reason'][number];
}

/** A joint is eased in steps that a spacer or a tape shows. */
const STEP: Ticks = TICKS_PER_INCH / 64;

/**
 * The job with its joint narrower or wider by as little as does, where the job allows that and strips in sight then are fewer on all
 * surfaces together; else the job as it is. Narrower goes before wider by as much.
 */
export function easedJob(job: Job, placed: readonly Placed[]): Eased {
  const allowed = Math.max(0, ...placed.map(({ surface }) => surface.start.easeJoint ?? 0));
  const before = allowed > 0 ? stripsOf(job, placed) : 0;
  if (before === 0) return { job };
  const eases = Array.from({ length: Math.floor(allowed / STEP) }, (_, i) => (i + 1) * STEP).flatMap((by) => [
    -by,
    by,
  ]);
  const tried = eases
    .map((by) => job.joint + by)
    .filter((joint) => joint >= EASED_JOINT.value.least)
    .map((joint) => ({ joint, after: stripsOf({ ...job, joint }, placed) }));
  const least = Math.min(before, ...tried.map(({ after }) => after));
  const best = tried.find(({ after }) => after === least && after < before);
  if (!best) return { job };
  const figures = { before: job.joint, joint: best.joint, beforeCount: before, afterCount: best.after };
  return { job: { ...job, joint: best.joint }, reason: { code: 'start.eased', figures } };
}

/** Strips in sight of all surfaces; as good as endless where one cannot be laid. */
function stripsOf(job: Job, placed: readonly Placed[]): number {
  return placed.reduce((sum, { surface, room }) => {
    const layout = makeLayout(job, surface, room);
    return sum + ('problems' in layout ? Number.POSITIVE_INFINITY : (layout.start.chosen.thin ?? 0));
  }, 0);
}
