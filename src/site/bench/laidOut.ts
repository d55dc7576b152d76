import { makeCuts } from '../../cuts/makeCuts.ts';
import { makeLayout } from '../../layout/makeLayout.ts';
import { makeRoom } from '../../room/makeRoom.ts';
import { core } from '../Core.ts';

/** The job of a floor of the bench, its layout and its cuts; throws where the job file is none. */
export function laidOut(text: string) {
  const { job, problems } = core.readJob(text, 'bench');
  const made = job && makeRoom(job.surfaces[0]!, 'inches');
  if (!made || 'problems' in made) throw new Error(problems.map(({ code }) => code).join(', '));
  const layout = makeLayout(job, job.surfaces[0]!, made.room);
  if ('problems' in layout) throw new Error(layout.problems.map(({ code }) => code).join(', '));
  return { job, layout, cuts: makeCuts(job, layout) };
}
