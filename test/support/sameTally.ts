import { expect } from 'vitest';
import type { SurfaceSpec } from '../../src/job/Job.ts';
import type { Layout } from '../../src/layout/Layout.ts';
import { layOut } from './layOut.ts';
import { isLeft, isWhole, nudged, sameRank, TALLIED, type Tally } from './onKnifeEdge.ts';
import type { RandomRoom } from './randomRoom.ts';

/** The tally of a layout as it was made. */
function tallyOf({ pieces, left, start }: Layout): Tally {
  const { hardCuts, underHalf, nearFull, webFaults } = start.chosen;
  return {
    pieces: pieces.length,
    whole: pieces.filter(({ shape, fullTile }) => isWhole(shape, fullTile)).length,
    left: left.filter(({ shape }) => isLeft(shape)).length,
    hardCuts,
    underHalf,
    nearFull,
    webFaults,
  };
}

/**
 * The tally, the same for every way to look at the room. Where rounding may decide, a count may lie anywhere between
 * those that a nudge of the pattern by three ticks makes; another start only where such a nudge puts it first. Nothing else is taken
 * for rounding.
 */
export function sameTally(room: RandomRoom, ...others: SurfaceSpec[]): void {
  const { room: made, layout } = layOut(room.job, room.surface);
  const own = tallyOf(layout);
  for (const surface of others) {
    const found = tallyOf(layOut(room.job, surface).layout);
    const isRounding =
      among(found, [own]) ||
      among(found, nudged(made, room.surface, layout)) ||
      sameRank(made, room.surface, layout).some((tallies) => among(found, tallies));
    if (!isRounding) expect(found).toEqual(own);
  }
}

/** Whether each count lies between the least and the most of those in a list of tallies. */
function among(tally: Tally, tallies: readonly Tally[]): boolean {
  return TALLIED.every((of) => {
    const counts = tallies.map((one) => one[of]);
    return tally[of] >= Math.min(...counts) && tally[of] <= Math.max(...counts);
  });
}
