import type { Job } from './Job.ts';

/**
 * Whether the floors of a job have one doorway in all: nobody crosses them on the way out of the house, unless that door is the way out
 * itself. Without any doorway nobody has told.
 *
 * @example isDeadEnd({ surfaces: [{ doorways: [] }] }) //=> false
 */
export function isDeadEnd({
  surfaces,
}: {
  readonly surfaces: readonly Pick<Job['surfaces'][number], 'doorways'>[];
}): boolean {
  return surfaces.flatMap(({ doorways }) => doorways).length === 1;
}
