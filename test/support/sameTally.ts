import { isDeepStrictEqual } from 'node:util';
import { expect } from 'vitest';
import type { Shape } from '../../src/geometry/index.ts';
import type { SurfaceSpec } from '../../src/job/Job.ts';
import type { Layout } from '../../src/layout/Layout.ts';
import { areaOf, lengthRound } from './Judged.ts';
import { layOut } from './layOut.ts';
import { onKnifeEdge } from './onKnifeEdge.ts';
import type { RandomRoom } from './randomRoom.ts';

/** What is left is counted from this width in ticks up: rounding of the room's corners makes and unmakes specks. */
const SPECK = 8;

const meanWidth = (shape: Shape) => (2 * areaOf(shape)) / lengthRound(shape.outer);

/** A corner that touches the field's edge may lose a tick or not. */
const isWhole = ({ shape, fullTile }: Layout['pieces'][number]) =>
  areaOf(shape) > 0.9999 * areaOf({ outer: fullTile, holes: [] });

/** What must not change when a room is only looked at differently. */
function tally({ pieces, left, start }: Layout) {
  const { hardCuts, underHalf, nearFull, webFaults } = start.chosen;
  return {
    pieces: pieces.length,
    whole: pieces.filter(isWhole).length,
    left: left.filter(({ shape }) => meanWidth(shape) > SPECK).length,
    hardCuts,
    underHalf,
    nearFull,
    webFaults,
  };
}

/** The tally, or only that it hangs on a tick: then rounding of the room may decide either way. */
export function sameTally(room: RandomRoom, ...others: SurfaceSpec[]): void {
  const { room: made, layout } = layOut(room.job, room.surface);
  for (const surface of others) {
    const found = tally(layOut(room.job, surface).layout);
    if (isDeepStrictEqual(found, tally(layout)) || onKnifeEdge(made, room.surface, layout)) continue;
    expect(found).toEqual(tally(layout));
  }
}
