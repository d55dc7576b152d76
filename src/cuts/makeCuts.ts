import type { Job } from '../job/Job.ts';
import type { Layout } from '../layout/Layout.ts';
import type { Cuts } from './Cut.ts';
import { groupCuts } from './groupCuts.ts';
import { makeRows } from './makeRows.ts';
import { uprightPieces } from './uprightPieces.ts';

/**
 * How each piece of a surface that is not whole is cut, equal cuts under one number, and the rows that must close.
 *
 * Lengths in ticks; sizes exact and as sawn in steps of `job.print.step`. Total and deterministic.
 */
export function makeCuts(job: Job, layout: Layout): Cuts {
  return {
    surface: layout.surface,
    cuts: groupCuts(uprightPieces(job, layout)),
    rows: makeRows(layout, job.print),
  };
}
