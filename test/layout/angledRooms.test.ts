import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { PatternLine, SurfaceSpec } from '../../src/job/Job.ts';
import { coverTheField, layoutOf } from '../support/coverTheField.ts';
import { looksAlike } from '../support/looksAlike.ts';
import { type RandomRoom, randomRoom } from '../support/randomRoom.ts';

/** Rooms out of square of either kind of line, in `npm test` and in the long run. */
const ROOMS = process.env.LONG === '1' ? 400 : 6;

/** Of random rooms three in a hundred get another start when they are looked at differently: of so few, one may. */
const otherwise = (rooms: number) => Math.max(2, rooms / 16);

const outOfSquare = randomRoom.filter(({ kind }) => kind === 'outOfSquare' || kind === 'leaningL');

function along(room: RandomRoom, line: PatternLine): RandomRoom {
  const pattern = { ...room.surface.pattern, turnedDeg: 0, along: line };
  return { ...room, surface: { ...room.surface, pattern } };
}

/** From the doorway, where there is one, to the middle of the wall across; else from a corner to what stands in the room. */
function sightIn({ doorways, obstacles, walls }: SurfaceSpec): PatternLine {
  const across = walls[2]!.id;
  const from = doorways[0]?.name ?? obstacles[0]?.name ?? 'A';
  return { kind: 'sight', from, to: across };
}

const roomsOf = (seed: number, line: (room: RandomRoom) => PatternLine) =>
  fc
    .sample(outOfSquare, { seed, numRuns: ROOMS })
    .map((room) => along(room, line(room)))
    .map((room, i) => [`${i} ${room.kind} ${room.surface.pattern.name}`, room] as const);

const sharing = roomsOf(20270302, ({ job: { tiles } }) => {
  const least = Math.min(tiles[0]!.length, tiles[0]!.width);
  return { kind: 'shared', near: 'A-B', least, focalWeight: 2 };
});

describe('random rooms out of square, their pattern along the shared taper', () => {
  coverTheField(sharing);

  test.each(sharing)('%s: no other direction has a smaller largest taper', (_, room) => {
    const [now, ...others] = layoutOf(room).tapers.ways;
    for (const { worst } of others) expect(worst).toBeGreaterThanOrEqual(now!.worst - 4);
  });

  looksAlike(sharing, otherwise(ROOMS));
});

describe('random rooms out of square, their pattern along a line from place to place', () => {
  const sighted = roomsOf(20270303, ({ surface }) => sightIn(surface));
  coverTheField(sighted);
  looksAlike(sighted, otherwise(ROOMS));
});
