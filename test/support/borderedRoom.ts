import fc from 'fast-check';
import type { BorderCourse } from '../../src/job/Job.ts';
import { tileOf } from '../pattern/support/tileOf.ts';
import { type RandomRoom, randomRoom } from './randomRoom.ts';

const IN = 8128;

/** Rooms with room for a border: no arm of theirs is under 20 in wide. */
const KINDS = ['rectangle', 'outOfSquare', 'L', 'leaningL', 'clipped', 'T'];

const course = fc.record({
  length: fc.integer({ min: 7 * IN, max: 18 * IN }),
  width: fc.integer({ min: 2 * IN, max: 4 * IN }),
  ripped: fc.boolean(),
  corners: fc.constantFrom<Pick<BorderCourse, 'corners' | 'through'>>(
    { corners: 'mitred' },
    { corners: 'butted', through: 'right' },
    { corners: 'butted', through: 'left' },
  ),
});

/** A random room with a border of one or two courses, and its field inside. */
export const borderedRoom: fc.Arbitrary<RandomRoom> = fc
  .tuple(
    randomRoom.filter(
      (room) => KINDS.includes(room.kind) && !namesDoorway(room.surface) && hasWideStem(room),
    ),
    fc.array(course, { minLength: 1, maxLength: 2 }),
  )
  .map(([{ kind, job, surface }, courses]): RandomRoom => {
    const tiles = courses.map(({ length, width }, i) => tileOf(`band${i}`, length, width));
    const border = courses.map(({ corners, width, ripped }, i): BorderCourse => {
      return { tile: `band${i}`, width: ripped ? Math.round(width * 0.7) : width, ...corners };
    });
    return { kind, job: { ...job, tiles: [...job.tiles, ...tiles] }, surface: { ...surface, border } };
  });

/** Whether the stem of a T, whose end is its fifth wall, has room for a border on both sides. */
function hasWideStem({ kind, surface }: RandomRoom): boolean {
  return kind !== 'T' || surface.walls[4]!.readings[0]! >= 20 * IN;
}

/** A start that names a doorway cannot be had inside a border. */
function namesDoorway({ start, doorways }: RandomRoom['surface']): boolean {
  return doorways.some(({ name }) => JSON.stringify([start.along, start.across]).includes(name));
}
