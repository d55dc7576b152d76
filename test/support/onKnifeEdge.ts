import type { Point } from '../../src/geometry/index.ts';
import type { SurfaceSpec } from '../../src/job/Job.ts';
import { frameRoom } from '../../src/layout/frame/frameRoom.ts';
import { makeGround } from '../../src/layout/frame/Ground.ts';
import { turnOf } from '../../src/layout/frame/turnOf.ts';
import type { Layout } from '../../src/layout/Layout.ts';
import { countTiles } from '../../src/layout/pieces/insideTiles.ts';
import { layTiles } from '../../src/layout/pieces/layTiles.ts';
import type { Room } from '../../src/room/Room.ts';

/** Rounding of a turned room moves its corners by a tick each way, seen from the pattern by two. */
const NUDGES: readonly Point[] = [
  [0, 0],
  [3, 0],
  [-3, 0],
  [0, 3],
  [0, -3],
];

/**
 * Whether a layout's tallies hang on a tick or two: a corner of the room lies on a tile's edge, so that moving
 * the pattern by three ticks makes other pieces.
 */
export function onKnifeEdge(room: Room, surface: SurfaceSpec, { pattern, origin }: Layout): boolean {
  const names = room.openings.map(({ name }) => name);
  const ground = makeGround(frameRoom(room, turnOf(room, surface.pattern)), names, surface);
  const tallies = NUDGES.map(([x, y]) => {
    const { inside, border } = layTiles(ground, pattern, [origin[0] + x, origin[1] + y]);
    const hard = border.filter((piece) => piece.hard).length;
    const webs = border.filter(({ web }) => web !== null && web < surface.minWeb).length;
    return `${countTiles(inside) + border.length} ${hard} ${webs}`;
  });
  return new Set(tallies).size > 1;
}
