import type { Cuts } from '../cuts/Cut.ts';
import { groupCuts } from '../cuts/groupCuts.ts';
import { uprightPieces } from '../cuts/uprightPieces.ts';
import type { Job } from '../job/Job.ts';
import type { Layout } from '../layout/Layout.ts';

/** The cuts of a layout that is only compared: nobody adds up its rows. */
export function cutsWithoutRows(job: Job, layout: Layout): Cuts {
  return { surface: layout.surface, cuts: groupCuts(uprightPieces(job, layout)), rows: [] };
}
