import { frameRoom } from '../../layout/frame/frameRoom.ts';
import { makeGround } from '../../layout/frame/Ground.ts';
import { turnOf } from '../../layout/frame/turnOf.ts';
import { makePattern } from '../../pattern/index.ts';
import { makeRoom } from '../../room/makeRoom.ts';
import { core } from '../Core.ts';

/** What a search for a start is asked by the bench. */
export const WISHES = {
  fixed: [undefined, undefined],
  from: [0, 0],
  margin: 0,
  offBalance: () => 0,
} as const;

export type Ready = ReturnType<typeof readied>;

/** A floor of the bench up to where its start is searched; throws where the job file is none. */
export function readied(text: string) {
  const { job } = core.readJob(text, 'leaning');
  const surface = job?.surfaces[0];
  const made = surface && makeRoom(surface, 'inches');
  if (!job || !surface || !made || 'problems' in made) throw new Error('the floors of the bench are floors');
  const { room } = made;
  const pattern = makePattern(surface.pattern, job.tiles, job.joint);
  const ground = makeGround(frameRoom(room, turnOf(room, surface.pattern)), [], surface, job.print.step);
  return { job, surface, room, pattern, ground };
}
