import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { SurfaceSpec } from '../../../src/job/Job.ts';
import { frameRoom } from '../../../src/layout/frame/frameRoom.ts';
import { makeGround } from '../../../src/layout/frame/Ground.ts';
import { turnOf } from '../../../src/layout/frame/turnOf.ts';
import { searchView } from '../../../src/layout/start/search/searchView.ts';
import { wallDirections } from '../../../src/layout/start/search/wallDirections.ts';
import { makePattern } from '../../../src/pattern/index.ts';
import { makeRoom } from '../../../src/room/makeRoom.ts';
import { type RandomRoom, randomRoom } from '../../support/randomRoom.ts';
import { mirrored, renumbered } from '../../support/transformSurface.ts';

/** Walls as the search reads them, by direction and side: their length in all, and how far past the nearest and the farthest the first tile reaches. */
function wallsOf({ job }: RandomRoom, surface: SurfaceSpec): Readonly<Record<string, readonly number[]>> {
  const made = makeRoom(surface, job.print.system);
  if ('problems' in made) throw new Error('a random room is a room');
  const pattern = makePattern(surface.pattern, job.tiles, job.joint);
  const frame = frameRoom(made.room, turnOf(made.room, surface.pattern));
  const names = made.room.openings.map(({ name }) => name);
  const ground = makeGround(frame, names, surface);
  const { directions } = searchView(ground, pattern, wallDirections(ground, pattern));
  const walls: Record<string, readonly [length: number, least: number, most: number]> = {};
  for (const { normal, readings, ahead, behind } of directions) {
    for (const { side, at, length } of readings) {
      const key = `${normal.map((part) => part.toFixed(4)).join(' ')} ${side}`;
      const past = (side > 0 ? ahead : behind)[0]!.top - at;
      const [sum, least, most] = walls[key] ?? [0, Infinity, -Infinity];
      walls[key] = [sum + length, Math.min(least, past), Math.max(most, past)];
    }
  }
  return walls;
}

/** Corners of a room are rounded to ticks, and its middle is. */
const ROUNDING = 8;

const rooms = fc
  .sample(randomRoom, { seed: 20270501, numRuns: 60 })
  .map((room, i) => [`${i} ${room.kind} ${room.surface.pattern.name}`, room] as const);

describe('a room as the search sees it', () => {
  test.each(rooms)('%s: is the same from another first corner and in a mirror, but for ticks', (_, room) => {
    const own = wallsOf(room, room.surface);
    const others = [
      ...[1, 2, 3].map((first) => renumbered(room.surface, first)),
      mirrored(room.surface, room.job.tiles[0]!.length + room.job.joint),
    ];
    for (const other of others.map((surface) => wallsOf(room, surface))) {
      expect(Object.keys(other).sort()).toEqual(Object.keys(own).sort());
      for (const [key, figures] of Object.entries(own))
        figures.forEach((figure, i) => {
          expect(Math.abs(other[key]![i]! - figure), `${key}: ${i}`).toBeLessThan(ROUNDING);
        });
    }
  });
});
