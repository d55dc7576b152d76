import { expect } from 'vitest';
import type { SurfaceSpec } from '../../src/job/Job.ts';
import type { Candidate, Layout } from '../../src/layout/Layout.ts';
import { START_TOLERANCE } from '../../src/trade/index.ts';
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
 * for rounding. False where a start that is as good along the walls was chosen instead: that must be rare.
 */
export function sameTally(room: RandomRoom, ...others: SurfaceSpec[]): boolean {
  const { room: made, layout } = layOut(room.job, room.surface);
  const own = tallyOf(layout);
  let same = true;
  for (const surface of others) {
    const other = layOut(room.job, surface).layout;
    const found = tallyOf(other);
    const isRounding =
      among(found, [own]) ||
      among(found, nudged(made, room.surface, layout)) ||
      sameRank(made, room.surface, layout).some((tallies) => among(found, tallies));
    if (isRounding) continue;
    if (asGood(layout.start.chosen, other.start.chosen)) same = false;
    else expect(found).toEqual(own);
  }
  return same;
}

/**
 * Whether two searched starts are both within what one may be worse by: the walls cannot tell them apart then, and which of them has the
 * better corners may hang on a tick.
 */
function asGood(one: Candidate, other: Candidate): boolean {
  if (!one.walls || !other.walls) return false;
  return (
    Math.abs(one.walls.strips - other.walls.strips) <= 2 * START_TOLERANCE.value.strips &&
    Math.abs(one.walls.halves - other.walls.halves) <= 2 * START_TOLERANCE.value.halves &&
    Math.abs(one.walls.narrowest - other.walls.narrowest) <= 0.05
  );
}

/** Whether each count lies between the least and the most of those in a list of tallies. */
function among(tally: Tally, tallies: readonly Tally[]): boolean {
  return TALLIED.every((of) => {
    const counts = tallies.map((one) => one[of]);
    return tally[of] >= Math.min(...counts) && tally[of] <= Math.max(...counts);
  });
}
