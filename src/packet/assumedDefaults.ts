import type { DefaultUsed, Job } from '../job/Job.ts';
import type { Stages } from './makeSurface.ts';

/**
 * The settings that nobody wrote and that the job rests on: where a floor's readings fix its shape, its angles come from them, and
 * the right angles of the job file are nowhere reckoned with.
 */
export function assumedDefaults(
  { defaults }: Pick<Job, 'defaults'>,
  stages: readonly Pick<Stages, 'surface' | 'room'>[],
): readonly DefaultUsed[] {
  const fixed = stages
    .filter(({ room }) => room.adjustment.method === 'leastSquares')
    .map(({ surface }) => surface.name);
  return defaults.filter(
    ({ path }) =>
      !fixed.some((name) =>
        [`${name}.angles.`, `floors.${name}.angles.`].some((own) => path.startsWith(own)),
      ),
  );
}
