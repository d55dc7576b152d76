import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { shapeArea } from '../../src/geometry/index.ts';
import { makeRoom } from '../../src/room/makeRoom.ts';
import {
  box,
  circle,
  doorway,
  inch,
  obstacle,
  points,
  post,
  problemsOf,
  rectangle,
  surface,
  undercut,
  type Wish,
} from './support/surface.ts';

const walls = box(100, 60);
const island = (name: string, along: number, out: number, fromA: number, fromD: number) =>
  obstacle(name, rectangle(along, out, ['A-B', fromA], ['D-A', fromD]));
/** A room 60 deep with a notch 80 deep in its far wall. */
const crossed = {
  'A-B': inch(100),
  'B-C': inch(60),
  'C-D': inch(40),
  'D-E': inch(80),
  'E-F': inch(20),
  'F-G': inch(80),
  'G-H': inch(40),
  'H-A': inch(60),
};
const inL = {
  'A-B': inch(180),
  'B-C': inch(60),
  'C-D': inch(84),
  'D-E': inch(48),
  'E-F': inch(96),
  'F-A': inch(108),
};

interface Row {
  readonly trouble: string;
  readonly wish: Wish;
  readonly code: string;
  readonly path: string;
  readonly found: string;
}

const rows: readonly Row[] = [
  {
    trouble: 'a walk that ends 3 in and 4 in from where it began',
    wish: { walls: { ...walls, 'C-D': inch(97), 'D-A': inch(56) } },
    code: 'misclosure',
    path: 'floor.walls.D-A',
    found: '5 in',
  },
  {
    trouble: 'one diagonal that is a foot too long',
    wish: { walls, diagonals: { 'A-C': inch(Math.hypot(100, 60) + 12), 'B-D': inch(Math.hypot(100, 60)) } },
    code: 'misclosure',
    path: 'floor.walls.B-C',
    found: '',
  },
  {
    trouble: 'a lone diagonal that the walls and the angles of an L contradict',
    wish: { walls: inL, angles: { D: 270 }, diagonals: { 'B-F': inch(Math.hypot(180, 108) - 10) } },
    code: 'misclosure',
    path: 'floor.diagonals.B-F',
    found: '10 in',
  },
  {
    trouble: 'readings of one wall that are not of one wall',
    wish: { walls: { ...walls, 'A-B': [inch(100), inch(112)] } },
    code: 'readingsDisagree',
    path: 'floor.walls.A-B',
    found: '1 ft',
  },
  {
    trouble: 'an L whose inside corner is not said',
    wish: { walls: inL },
    code: 'angles',
    path: 'floor.angles',
    found: '540',
  },
  {
    trouble: 'a wall of no length',
    wish: { walls: { ...walls, 'B-C': 0 } },
    code: 'zeroLength',
    path: 'floor.walls.B-C',
    found: '0 in',
  },
  {
    trouble: 'a wall without a reading',
    wish: { walls: { ...walls, 'B-C': [] } },
    code: 'noReading',
    path: 'floor.walls.B-C',
    found: 'B-C',
  },
  {
    trouble: 'two walls only',
    wish: { walls: { 'A-B': inch(100), 'B-A': inch(100) } },
    code: 'tooFewWalls',
    path: 'floor.walls',
    found: '2',
  },
  {
    trouble: 'walls that do not join',
    wish: { walls: { 'A-B': inch(100), 'C-D': inch(60), 'D-A': inch(100) } },
    code: 'walkBroken',
    path: 'floor.walls.A-B',
    found: 'A-B',
  },
  {
    trouble: 'a diagonal to a corner that is not there',
    wish: { walls, diagonals: { 'A-X': inch(80) } },
    code: 'walkBroken',
    path: 'floor.diagonals.A-X',
    found: 'A-X',
  },
  {
    trouble: 'a diagonal longer than the two walls it closes',
    wish: { walls, diagonals: { 'A-C': '14 ft' } },
    code: 'triangle',
    path: 'floor.diagonals.A-C',
    found: '14 ft',
  },
  {
    trouble: 'three walls that make no triangle',
    wish: { walls: { 'A-B': inch(36), 'B-C': inch(24), 'C-A': '6 ft' } },
    code: 'triangle',
    path: 'floor.walls.C-A',
    found: '6 ft',
  },
  {
    trouble: 'walls that cross',
    wish: { walls: crossed, angles: { E: 270, F: 270 } },
    code: 'crossing',
    path: 'floor.walls.D-E',
    found: 'D-E',
  },
  {
    trouble: 'a doorway beyond the end of its wall',
    wish: { walls, doorways: [doorway({ from: inch(36) })] },
    code: 'doorwayBeyondWall',
    path: 'floor.doorways.hall',
    found: '2 ft 6 in',
  },
  {
    trouble: 'casing to tuck under beyond the end of its wall',
    wish: { walls, doorways: [doorway({ from: 0, right: undercut(1) })] },
    code: 'doorwayBeyondWall',
    path: 'floor.doorways.hall',
    found: '2 ft 6 in',
  },
  {
    trouble: 'a doorway in a wall that is not there',
    wish: { walls, doorways: [doorway({ wall: 'D-E' })] },
    code: 'unknownWall',
    path: 'floor.doorways.hall',
    found: 'D-E',
  },
  {
    trouble: 'a doorway of no width',
    wish: { walls, doorways: [doorway({ clear: 0 })] },
    code: 'zeroLength',
    path: 'floor.doorways.hall',
    found: '0 in',
  },
  {
    trouble: 'two doorways in one place',
    wish: { walls, doorways: [doorway(), doorway({ name: 'yard', from: inch(30), clear: inch(20) })] },
    code: 'doorwaysOverlap',
    path: 'floor.doorways.yard',
    found: '9 in',
  },
  {
    trouble: 'an obstacle outside the room',
    wish: { walls, obstacles: [obstacle('pipe', circle(2, ['A-B', 20], ['D-A', 104]))] },
    code: 'obstacleOutside',
    path: 'floor.obstacles.pipe',
    found: '0 %',
  },
  {
    trouble: 'an obstacle that is mostly in the wall',
    wish: { walls, obstacles: [island('vanity', 30, 20, 20, 90)] },
    code: 'obstacleOutside',
    path: 'floor.obstacles.vanity',
    found: '33 %',
  },
  {
    trouble: 'a cabinet with its lengths swapped, half inside another',
    wish: { walls, obstacles: [island('back cabinet', 21, 50, 0, 0), island('left cabinet', 40, 21, 0, 0)] },
    code: 'obstaclesOverlap',
    path: 'floor.obstacles.left cabinet',
    found: '1 ft 9 in',
  },
  {
    trouble: 'a post on a flange',
    wish: {
      walls,
      obstacles: [
        { ...obstacle('flange', circle(7, ['A-B', 20], ['D-A', 20])), meets: 'flange' },
        { ...obstacle('post', rectangle(2, 2, ['A-B', 19], ['D-A', 19])), meets: 'post' },
      ],
    },
    code: 'obstaclesOverlap',
    path: 'floor.obstacles.post',
    found: '2 in',
  },
  {
    trouble: 'an obstacle measured from two walls that run parallel',
    wish: { walls, obstacles: [obstacle('pipe', circle(2, ['A-B', 20], ['C-D', 40]))] },
    code: 'parallelWalls',
    path: 'floor.obstacles.pipe',
    found: 'A-B, C-D',
  },
  {
    trouble: 'an obstacle measured from a wall that is not there',
    wish: { walls, obstacles: [obstacle('pipe', circle(2, ['A-B', 20], ['X-Y', 40]))] },
    code: 'unknownWall',
    path: 'floor.obstacles.pipe',
    found: 'X-Y',
  },
  {
    trouble: 'an obstacle whose sides cross',
    wish: {
      walls,
      obstacles: [
        obstacle('stair', {
          kind: 'polygon',
          walls: ['A-B', 'D-A'],
          points: points([10, 10], [20, 20], [20, 10], [10, 20]),
        }),
      ],
    },
    code: 'obstacleShape',
    path: 'floor.obstacles.stair',
    found: 'stair',
  },
  {
    trouble: 'a field that holds nothing',
    wish: { walls, obstacles: [island('hearth', 100, 60, 0, 0)] },
    code: 'emptyField',
    path: 'floor',
    found: 'floor',
  },
];

describe('a room is refused for', () => {
  it.each(rows)('$trouble', ({ wish, code, path, found }) => {
    const [problem, ...more] = problemsOf(wish).map((one) => ({ ...one, path: one.path.join('.') }));
    expect(more.filter((one) => one.code !== code)).toEqual([]);
    expect(problem).toMatchObject(found ? { code, path, found } : { code, path });
  });

  it('doorways and obstacles that do not fit, all of them at once', () => {
    const found = problemsOf({
      walls,
      doorways: [doorway({ from: inch(36) }), doorway({ name: 'yard', wall: 'X-Y' })],
      obstacles: [island('tub', 30, 20, 0, 200)],
    });
    expect(found.map(({ code }) => code)).toEqual(['doorwayBeyondWall', 'unknownWall', 'obstacleOutside']);
  });

  it('a recess that runs into another wall', () => {
    // A tongue of wall 1 in thick with a doorway through each of its faces, each 2 3/8 in deep.
    const tongue = {
      'A-B': inch(101),
      'B-C': inch(60),
      'C-D': inch(50),
      'D-E': inch(50),
      'E-F': inch(1),
      'F-G': inch(50),
      'G-H': inch(50),
      'H-A': inch(60),
    };
    const door = doorway({ wall: 'D-E', fromCorner: 'D', from: inch(10) });
    const found = problemsOf({ walls: tongue, angles: { E: 270, F: 270 }, doorways: [door] });
    expect(found.map(({ code, path }) => [code, path.join('.')])).toContainEqual([
      'doorwayCrosses',
      'floor.doorways.hall',
    ]);
  });

  it('a misclosure, but not for one that tape work can have', () => {
    // 2 in over, or 1 % of a walk of 320 in: the limit is 3 1/5 in.
    expect(problemsOf({ walls: { ...walls, 'C-D': inch(97) } })).toEqual([]);
    expect(problemsOf({ walls: { ...walls, 'C-D': inch(96.5) } })).toHaveLength(1);
  });

  it('its readings in the lengths of the job', () => {
    const spec = surface({ walls: { ...walls, 'C-D': 320 * 2400 } });
    const made = makeRoom(spec, 'mm');
    expect('problems' in made && made.problems[0]).toMatchObject({ found: '140 mm', figures: { at: 'A' } });
  });
});

// A room of n corners has 2n - 3 unknowns: one reading more checks them. Of a corner cut off five walls and two diagonals are as many as unknowns.
it('a shape that rests on angles which do not close asks for as many diagonals as check it', () => {
  const cutOff = { 'A-B': inch(98), 'B-C': inch(55), 'C-D': inch(42.5), 'D-E': inch(68), 'E-A': inch(85) };
  const more = (diagonals: Wish['diagonals']) =>
    problemsOf({ walls: cutOff, diagonals }).map(({ code, figures }) => [code, figures.more]);
  expect(more({})).toEqual([['angles', 3]]);
  expect(more({ 'A-C': inch(112.4), 'A-D': inch(108.25) })).toEqual([['angles', 1]]);
  expect(more({ 'A-C': inch(112.4), 'A-D': inch(108.25), 'C-E': inch(102.9) })).toEqual([]);
});

describe('a room is not refused for', () => {
  it('a tape that reads a wall an eighth too long', () => {
    const tall = doorway({ from: 0, clear: inch(60 + 1 / 8), right: post(1.5, 3) });
    expect(problemsOf({ walls, doorways: [tall] })).toEqual([]);
  });

  it('an obstacle that reads a little into the wall', () => {
    expect(problemsOf({ walls, obstacles: [island('tub', 30, 20, 0, -1)] })).toEqual([]);
  });

  it('cabinets that touch or read a little into each other, and a pipe that comes up within one', () => {
    const pipe = { ...obstacle('pipe', circle(2, ['A-B', 10], ['D-A', 10])), meets: 'pipe' as const };
    const beside = [island('left', 30, 20, 0, 0), island('right', 30, 20, 0, 29.5), pipe];
    expect(problemsOf({ walls, obstacles: beside })).toEqual([]);
  });
});

describe('whatever is written', () => {
  const length = fc.oneof(fc.integer({ min: -9, max: 9 }), fc.integer({ min: 1, max: inch(400) }));
  const names = 'ABCDEF';
  const wish = fc
    .record({
      lengths: fc.array(length, { minLength: 3, maxLength: 6 }),
      angles: fc.array(fc.constantFrom(90, 90, 90, 45, 135, 180, 270), { minLength: 6, maxLength: 6 }),
      diagonals: fc.array(fc.tuple(fc.integer({ min: 0, max: 5 }), fc.integer({ min: 0, max: 5 }), length), {
        maxLength: 8,
      }),
      at: fc.tuple(length, length, length),
    })
    .map(({ lengths, angles, diagonals, at }): Wish => {
      const id = (i: number, j: number) => `${names[i]}-${names[j]}`;
      const walls = lengths.map((one, i) => [id(i, (i + 1) % lengths.length), one]);
      const [from, clear, doorLine] = at;
      const sides = { left: undercut(1 / 2), right: post(1.5, 1.5) };
      return {
        walls: Object.fromEntries(walls),
        angles: Object.fromEntries(angles.map((one, i) => [names[i]!, one])),
        diagonals: Object.fromEntries(diagonals.map(([i, j, one]) => [id(i, j), one])),
        doorways: [doorway({ wall: 'B-C', fromCorner: 'C', from, clear, doorLine, ...sides })],
        obstacles: [obstacle('pipe', circle(2, ['A-B', from / 8128], ['B-C', clear / 8128]))],
      };
    });

  it('gives a room with a field, or problems that each say where', () => {
    fc.assert(
      fc.property(wish, (any) => {
        const made = makeRoom(surface(any));
        if ('room' in made) {
          for (const shape of made.room.field) expect(shapeArea(shape)).toBeGreaterThan(0);
          expect(made.room.outline.flat().every(Number.isInteger)).toBe(true);
        } else {
          expect(made.problems.length).toBeGreaterThan(0);
          for (const { path, found } of made.problems)
            expect([path[0], found.length > 0]).toEqual(['floor', true]);
        }
      }),
      { seed: 12, numRuns: 1000 },
    );
  });
});
