import { groupCuts } from '../cuts/groupCuts.ts';
import { uprightPieces } from '../cuts/uprightPieces.ts';
import type { Job, SurfaceSpec } from '../job/Job.ts';
import type { Candidate, Layout, Rival } from '../layout/Layout.ts';
import { layAnother } from '../layout/layAnother.ts';
import type { Room } from '../room/Room.ts';
import { countTiles, countTilesFast } from '../tiles/countTiles.ts';

/**
 * The start that takes fewer tiles than the chosen one, among those that are nearly as good in all that the trade puts before tiles;
 * undefined where none does. Counted by laying, cutting and sharing tiles, the last two to the fewest.
 */
export function fewerTiles(job: Job, surface: SurfaceSpec, room: Room, layout: Layout): Rival | undefined {
  const { rivals = [], start } = layout;
  if (rivals.length === 0) return undefined;
  const laid = (candidate: Candidate) => {
    const other = layAnother(layout, surface, room, job.print.step, candidate);
    return { other, cuts: { surface: surface.name, cuts: groupCuts(uprightPieces(job, other)), rows: [] } };
  };
  const fast = (candidate: Candidate) => {
    const { other, cuts } = laid(candidate);
    return countTilesFast(job, other, cuts);
  };
  const counted = rivals.map((rival) => ({ rival, tiles: fast(rival.chosen) }));
  const best = counted.reduce((one, other) => (other.tiles < one.tiles ? other : one));
  if (best.tiles >= fast(start.chosen)) return undefined;
  const [before, after] = [start.chosen, best.rival.chosen].map((candidate) => {
    const { other, cuts } = laid(candidate);
    return countTiles(job, other, cuts).tiles;
  }) as [number, number];
  if (after >= before) return undefined;
  const figures = { fewerCount: before - after, size: start.chosen.smallest };
  const reason = [...best.rival.chosen.reason, { code: 'start.fewerTiles', figures }];
  return { ...best.rival, chosen: { ...best.rival.chosen, reason } };
}
