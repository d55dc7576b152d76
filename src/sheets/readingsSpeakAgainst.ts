import { readAgain } from './readAgain.ts';
import type { SheetContext } from './SheetContext.ts';

/** Whether readings of a job that is not finished speak against each other: until they are read again nothing is snapped, sawn or bought. */
export function readingsSpeakAgainst(context: SheetContext): boolean {
  const { job, surfaces } = context.packet;
  return job.status !== 'finished' && surfaces.some((one) => readAgain(context, one).length > 0);
}
