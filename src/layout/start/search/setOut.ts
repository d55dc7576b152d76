import type { SurfaceSpec } from '../../../job/Job.ts';
import { START_TOLERANCE } from '../../../trade/index.ts';

/** Of what lines may be off, the part that is held against every figure at its worst; the rest widens what strips and halves must have. */
const PART = 200 / 508;

/**
 * How far chalk lines are taken to be off where a start is proved, in ticks.
 *
 * @example setOut({ tolerance: { lines: 508 } }) //=> 200
 */
export function setOut({
  tolerance = START_TOLERANCE.value,
}: {
  readonly tolerance?: Pick<NonNullable<SurfaceSpec['start']['tolerance']>, 'lines'>;
}): number {
  return Math.round(PART * tolerance.lines);
}
