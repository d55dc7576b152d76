import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { PatternLine, SurfaceSpec } from '../../../src/job/Job.ts';
import { turnOf } from '../../../src/layout/frame/turnOf.ts';
import { makeRoom } from '../../../src/room/makeRoom.ts';
import type { Room } from '../../../src/room/Room.ts';
import { rectangle, surfaceOf, ticks } from '../../support/surfaceOf.ts';
import { mirrored, renumbered } from '../../support/transformSurface.ts';

const LEAST = ticks('12 in');
const DEGREE = Math.PI / 180;

const shared = (near: string, focalWeight = 2): PatternLine => ({
  kind: 'shared',
  near,
  least: LEAST,
  focalWeight,
});

function sharing(surface: SurfaceSpec, near = 'A-B'): SurfaceSpec {
  return { ...surface, pattern: { ...surface.pattern, along: shared(near) } };
}

function roomOf(surface: SurfaceSpec): Room {
  const made = makeRoom(surface);
  if ('problems' in made) throw new Error(JSON.stringify(made.problems));
  return made.room;
}

/** Degrees from a wall to the direction of the pattern, counter-clockwise, quarter turns aside. */
function offWall(surface: SurfaceSpec, near: string): number {
  const room = roomOf(surface);
  const turn = (along: PatternLine | string) => turnOf(room, { ...surface.pattern, along }).turn;
  return quarterless(turn(shared(near)) - turn(near)) / DEGREE;
}

function quarterless(angle: number): number {
  return angle - Math.round(angle / (90 * DEGREE)) * 90 * DEGREE;
}

/** A wall as the judge sees it: corner to corner in the room, its angle in radians, how much it counts. */
function wallsOf(surface: SurfaceSpec): { angle: number; length: number; weight: number }[] {
  const { corners } = roomOf(surface);
  return corners.map((from, i) => {
    const to = corners[(i + 1) % corners.length]!;
    const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
    const { seen } = surface.walls[i]!;
    const weight = seen === 'focal' ? 2 : seen === 'plain' ? 1 : 0;
    return { angle: Math.atan2(dy, dx), length: Math.hypot(dx, dy), weight };
  });
}

type Wall = ReturnType<typeof wallsOf>[number];

/** The largest taper, weighted, of some walls against a direction. */
function worst(walls: readonly Wall[], turn: number): number {
  return Math.max(
    0,
    ...walls.map(
      ({ angle, length, weight }) => weight * length * Math.abs(Math.sin(quarterless(angle - turn))),
    ),
  );
}

const inch = (most: number) => fc.integer({ min: -most * 64, max: most * 64 }).map((of) => of * 127);

/** Rooms of four to six corners, each corner put off by some inches, walls hidden, plain and focal. */
const skewed = fc
  .record({
    wide: fc.integer({ min: 70, max: 190 }),
    deep: fc.integer({ min: 70, max: 150 }),
    isL: fc.boolean(),
    off: fc.array(fc.tuple(inch(4), inch(4)), { minLength: 6, maxLength: 6 }),
    seen: fc.array(fc.constantFrom('plain', 'plain', 'focal', 'hidden'), { minLength: 6, maxLength: 6 }),
  })
  .map(({ wide, deep, isL, off, seen }) => {
    const [w, d] = [ticks(`${wide} in`), ticks(`${deep} in`)];
    const cut = ticks('30 in');
    const corners: [number, number][] = isL
      ? [[0, 0], [w, 0], [w, d - cut], [w - cut, d - cut], [w - cut, d], [0, d]] // biome-ignore format: an L on a line
      : [[0, 0], [w, 0], [w, d], [0, d]]; // biome-ignore format: a room on a line
    const put = corners.map(([x, y], i) => [x + off[i]![0], y + off[i]![1]] as const);
    const walls = Object.fromEntries(
      put.map((_, i) => [
        `${String.fromCharCode(65 + i)}-${String.fromCharCode(65 + ((i + 1) % put.length))}`,
        { seen: seen[i] as 'plain' },
      ]),
    );
    return surfaceOf(put, { walls });
  });

describe('a pattern along the shared taper', () => {
  test('has no larger taper than at any angle, tried by thousandths of a degree', () => {
    fc.assert(
      fc.property(skewed, (surface) => {
        const { turn } = turnOf(roomOf(surface), sharing(surface).pattern);
        // Walls more than ten degrees off are no tapers but cuts at an angle.
        const walls = wallsOf(surface).filter(
          ({ angle, length }) => Math.abs(Math.tan(quarterless(angle - turn))) <= 0.18 && length >= LEAST,
        );
        const tried = Array.from({ length: 20_001 }, (_, i) => worst(walls, turn + (i - 10_000) * 1e-3 * DEGREE)); // biome-ignore format: one try a line
        // Corners are whole ticks.
        expect(worst(walls, turn)).toBeLessThanOrEqual(Math.min(...tried) + 1);
      }),
      { seed: 48, numRuns: 60 },
    );
  });

  test('lies to the walls as before when the room is walked from another corner', () => {
    fc.assert(
      fc.property(skewed, fc.integer({ min: 1, max: 3 }), (surface, by) => {
        expect(offWall(renumbered(surface, by), 'A-B')).toBeCloseTo(offWall(surface, 'A-B'), 3);
      }),
      { seed: 49, numRuns: 40 },
    );
  });

  test('leans the other way in the mirrored room', () => {
    fc.assert(
      fc.property(skewed, (surface) => {
        expect(offWall(mirrored(surface, LEAST), 'B-A')).toBeCloseTo(0 - offWall(surface, 'A-B'), 3);
      }),
      { seed: 50, numRuns: 40 },
    );
  });

  test.each(['A-B', 'B-C', 'C-D', 'D-A'])(
    'is that of the walls in a rectangle, to the bit: near %s',
    (near) => {
      const surface = surfaceOf(rectangle(ticks('143 3/8 in'), ticks('97 1/16 in')));
      const room = roomOf(surface);
      expect(turnOf(room, sharing(surface, near).pattern)).toEqual(
        turnOf(room, { ...surface.pattern, along: near }),
      );
    },
  );

  test('comes with the turn of the pattern on top', () => {
    const surface = surfaceOf(rectangle(ticks('120 in'), ticks('96 in')));
    const pattern = { ...sharing(surface).pattern, turnedDeg: 45 };
    expect(turnOf(roomOf(surface), pattern).turn).toBeCloseTo(Math.PI / 4, 12);
  });
});

// Arithmetic: a room of 120 in by 96 in whose wall C-D runs off by 2 in over its length, 0.9548 degrees.
describe('of two long walls that part by 2 in in 120 in', () => {
  const far = (more: object = {}) =>
    surfaceOf([[0, 0], [ticks('120 in'), 0], [ticks('120 in'), ticks('98 in')], [0, ticks('96 in')]], { walls: { 'A-B': more } }); // biome-ignore format: a room on a line

  test('each has half', () => {
    expect(offWall(far(), 'A-B')).toBeCloseTo(0.9548 / 2, 3);
  });

  test('the focal one has a third, as it counts twice', () => {
    expect(offWall(far({ seen: 'focal' }), 'A-B')).toBeCloseTo(0.9548 / 3, 3);
  });

  test('a hidden one has no say: the other one shares with the right end, as 120 in to 98 in', () => {
    expect(offWall(far({ seen: 'hidden' }), 'A-B')).toBeCloseTo((0.9548 * 120) / 218, 3);
  });
});

test('walls that stand at right angles count: of a room that leans the long walls have as much as the short', () => {
  // Arithmetic: 96 sin t = 60 sin (f − t) where tan f = (21/32) / 60; t is 5/13 of f.
  const lean = ticks('21/32 in');
  const [w, d] = [ticks('96 in'), ticks('60 in')];
  const surface = surfaceOf([[0, 0], [w, 0], [w + lean, d], [lean, d]]); // biome-ignore format: a room on a line
  expect(offWall(surface, 'A-B')).toBeCloseTo((-0.6266 * 5) / 13, 3);
});

test('a wall that cuts a corner off at an angle does not count', () => {
  const [w, d, cut] = [ticks('120 in'), ticks('96 in'), ticks('30 in')];
  const surface = surfaceOf([[0, 0], [w, 0], [w, d - cut], [w - cut, d], [0, d]]); // biome-ignore format: a room on a line
  expect(offWall(surface, 'A-B')).toBe(0);
});

test('a jog shorter than a tile does not count', () => {
  const jog = ticks('10 in');
  const [w, d] = [ticks('120 in'), ticks('96 in')];
  const surface = surfaceOf([[0, 0], [w, 0], [w, d], [ticks('60 in'), d], [ticks('61 in'), d - jog], [0, d - jog]]); // biome-ignore format: a room on a line
  expect(offWall(surface, 'A-B')).toBeCloseTo(0, 3);
});
