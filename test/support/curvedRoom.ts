import fc from 'fast-check';
import type { WallSpec } from '../../src/job/Job.ts';
import { makeRoom } from '../../src/room/makeRoom.ts';
import { type RandomRoom, randomRoom } from './randomRoom.ts';

const IN = 8128;

/** A bow of up to half an inch either way; a curve out of the room, up to nearly half a circle; a shallow one into it. */
const bend = fc.oneof(
  { weight: 3, arbitrary: fc.integer({ min: -64, max: 64 }).map((part) => () => (part * IN) / 128) },
  {
    weight: 2,
    arbitrary: fc.double({ min: 0.02, max: 0.45, noNaN: true }).map((of) => (wall: number) => of * wall),
  },
  {
    weight: 1,
    arbitrary: fc.double({ min: 0.02, max: 0.1, noNaN: true }).map((of) => (wall: number) => -of * wall),
  },
  { weight: 2, arbitrary: fc.constant(() => 0) },
);

/** Random rooms with bowed and curved walls, none refused and none without a curve. */
export const curvedRoom: fc.Arbitrary<RandomRoom> = fc
  .record({ room: randomRoom, bends: fc.array(bend, { minLength: 8, maxLength: 8 }) })
  .map(({ room, bends }) => {
    const walls = room.surface.walls.map((wall, i): WallSpec => {
      return { ...wall, rise: Math.round(bends[i]!(wall.readings[0]!)) };
    });
    return { ...room, surface: { ...room.surface, walls } };
  })
  .filter(({ surface }) => surface.walls.some(({ rise }) => rise) && 'room' in makeRoom(surface));
