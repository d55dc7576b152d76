import type { Job, SurfaceSpec } from '../job/Job.ts';
import type { Layout, Rival } from '../layout/Layout.ts';
import { layAnother } from '../layout/layAnother.ts';
import type { Room } from '../room/Room.ts';
import { countTiles, countTilesFast } from '../tiles/countTiles.ts';
import { cutsWithoutRows } from './cutsWithoutRows.ts';

/**
 * The start that takes fewer tiles than the chosen one, among those that are nearly as good in all that the trade puts before tiles;
 * undefined where none does. Counted by laying, cutting and sharing tiles, the last two to the fewest.
 */
export function fewerTiles(job: Job, surface: SurfaceSpec, room: Room, layout: Layout): Rival | undefined {
  const { rivals = [], start } = layout;
  if (rivals.length === 0) return undefined;
  const counted = (laid: Layout) => ({ laid, atMost: countTilesFast(job, laid) });
  const own = counted(layout);
  const best = rivals
    .map((rival) => ({ rival, ...counted(layAnother(layout, surface, room, job.print.step, rival.chosen)) }))
    .reduce((one, other) => (other.atMost < one.atMost ? other : one));
  if (best.atMost >= own.atMost) return undefined;
  const [before, after] = [own, best].map(
    ({ laid }) => countTiles(job, laid, cutsWithoutRows(job, laid)).tiles,
  ) as [number, number];
  if (after >= before) return undefined;
  const figures = { fewerCount: before - after, size: start.chosen.smallest };
  const reason = [...best.rival.chosen.reason, { code: 'start.fewerTiles', figures }];
  return { ...best.rival, chosen: { ...best.rival.chosen, reason } };
}
