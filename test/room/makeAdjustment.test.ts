import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Point, ringArea } from '../../src/geometry/index.ts';
import type { SurfaceSpec } from '../../src/job/Job.ts';
import type { Room } from '../../src/room/Room.ts';
import { box, inch, problemsOf, roomOf, surface } from './support/surface.ts';

const distance = (a: Point, b: Point) => Math.hypot(b[0] - a[0], b[1] - a[1]);
const letters = 'ABCDEFGHIJKL';
const id = (i: number, j: number) => `${letters[i]}-${letters[j]}`;

/** Readings of a true outline: all its walls, and the diagonals asked for. */
function readingsOf(corners: readonly Point[], diagonals: readonly (readonly [number, number])[] = []) {
  const n = corners.length;
  const entry = (i: number, j: number) => [id(i, j), Math.round(distance(corners[i]!, corners[j]!))] as const;
  return {
    walls: Object.fromEntries(corners.map((_, i) => entry(i, (i + 1) % n))),
    diagonals: Object.fromEntries(diagonals.map(([i, j]) => entry(i, j))),
  };
}

const sameShape = (room: Room, truth: readonly Point[], within: number) => {
  for (const [i, a] of truth.entries())
    for (const [j, b] of truth.entries())
      expect(Math.abs(distance(room.corners[i]!, room.corners[j]!) - distance(a, b))).toBeLessThanOrEqual(
        within,
      );
};

describe('four walls and both diagonals', () => {
  // A room of 96 × 60 in whose diagonals read 113 3/4 and 112 5/8 leans by (d1² − d2²) / 4a = 21/32 in its 60.
  const lean = (113.75 ** 2 - 112.625 ** 2) / (4 * 96);
  const room = roomOf({ walls: box(96, 60), diagonals: { 'A-C': '113 3/4 in', 'B-D': '112 5/8 in' } });

  it('show how far the ends lean', () => {
    expect(lean).toBeCloseTo(21 / 32, 1);
    // To 1/64 in; the corners are also drawn to what the walls say.
    expect(Math.abs(room.corners[3]![0] - inch(lean))).toBeLessThanOrEqual(127);
    expect(Math.abs(room.corners[2]![0] - room.corners[1]![0] - inch(lean))).toBeLessThanOrEqual(127);
  });

  it('check each other: a parallelogram has d1² + d2² = 2 (a² + b²), here met within 1/16 in', () => {
    const { method, redundancy, misclosure, measureNext } = room.adjustment;
    expect({ method, redundancy, measureNext }).toEqual({
      method: 'leastSquares',
      redundancy: 1,
      measureNext: undefined,
    });
    // The diagonals' mean square should be 9216 + 3600; what is left is the slip of one diagonal read alone.
    const expected = Math.sqrt(2 * (96 ** 2 + 60 ** 2) - 112.625 ** 2);
    expect(Math.abs(expected - 113.75)).toBeLessThan(1 / 16);
    expect(misclosure).toBeLessThan(inch(1 / 8));
  });

  it('keep every reading beside the value used', () => {
    const { readings } = room.adjustment;
    expect(readings.map((one) => one.id)).toEqual(['A-B', 'B-C', 'C-D', 'D-A', 'A-C', 'B-D']);
    for (const one of readings) expect(one.used - one.mean).toBe(one.correction);
    expect(readings[4]).toMatchObject({ kind: 'diagonal', read: [inch(113.75)], mean: inch(113.75) });
  });
});

describe('repeated readings', () => {
  it('count by their number', () => {
    const once = roomOf({ walls: box(96, 60), diagonals: { 'A-C': '113 3/4 in', 'B-D': '113 in' } });
    const often = roomOf({
      walls: box(96, 60),
      diagonals: { 'A-C': ['113 3/4 in', '113 3/4 in', '113 3/4 in'], 'B-D': '113 in' },
    });
    const correction = (room: Room) => Math.abs(room.adjustment.readings[4]!.correction);
    expect(correction(often)).toBeLessThan(correction(once));
    expect(often.adjustment.redundancy).toBe(1);
  });

  it('of a room with one reading too many say by how much they disagree, not which is out', () => {
    const twice = (inches: number) => [inch(inches), inch(inches + 1 / 8)];
    const walls = { 'A-B': twice(120), 'B-C': twice(90), 'C-D': twice(108), 'D-A': twice(90) };
    const found = problemsOf({ walls, diagonals: { 'A-C': twice(150), 'B-D': twice(150) } });
    expect(found).toHaveLength(1);
    expect(found[0]).toMatchObject({ code: 'misclosure', figures: { redundancy: 1 } });
  });
});

describe('five walls and all five diagonals', () => {
  const corners: Point[] = [
    [0, 0],
    [192, 0],
    [192, 182],
    [158, 216],
    [0, 216],
  ].map(([x, y]): Point => [inch(x!), inch(y!)]);
  const made = readingsOf(corners, [
    [0, 2],
    [0, 3],
    [1, 3],
    [1, 4],
    [2, 4],
  ]);
  const all = [...Object.keys(made.walls), ...Object.keys(made.diagonals)];

  it.each(all)('name %s when it is a foot out', (wrong) => {
    const slip = (readings: Record<string, number>) =>
      Object.fromEntries(
        Object.entries(readings).map(([key, one]) => [key, one + (key === wrong ? inch(12) : 0)]),
      );
    const found = problemsOf({
      walls: slip(made.walls),
      diagonals: slip(made.diagonals),
      angles: { C: 135, D: 135 },
    });
    expect(found.map(({ path }) => path.at(-1))).toEqual([wrong]);
  });
});

describe('walls alone', () => {
  const walls = { 'A-B': inch(98.25), 'B-C': inch(60.5), 'C-D': inch(97.875), 'D-A': inch(61) };
  const { adjustment, corners } = roomOf({ walls });

  it('are closed by the compass rule, and nothing checks them', () => {
    expect(adjustment).toMatchObject({ method: 'compass', redundancy: -1, measureNext: 'A-C' });
  });

  it('miss by what opposite walls differ', () => {
    expect(adjustment.misclosure).toBe(Math.round(Math.hypot(inch(98.25 - 97.875), inch(61 - 60.5))));
    expect(adjustment.misclosureAt).toBe('A');
  });

  it('share the misclosure in proportion to their lengths', () => {
    // By hand: the sums of the legs are 3/8 along A-B and −1/2 square to it; the walk is 317 5/8.
    const walk = 98.25 + 60.5 + 97.875 + 61;
    const along = (length: number) => (0.375 * length) / walk;
    const square = (length: number) => (-0.5 * length) / walk;
    const leg = (x: number, y: number) => inch(Math.hypot(x, y));
    const used = [
      leg(98.25 - along(98.25), -square(98.25)),
      leg(-along(60.5), 60.5 - square(60.5)),
      leg(-97.875 - along(97.875), -square(97.875)),
      leg(-along(61), -61 - square(61)),
    ];
    for (const [i, one] of adjustment.readings.entries())
      expect(Math.abs(one.used - used[i]!)).toBeLessThanOrEqual(2);
    expect(corners).toHaveLength(4);
  });

  it('with a diagonal too few show what it should have read', () => {
    const six = {
      'A-B': inch(180),
      'B-C': inch(60),
      'C-D': inch(84),
      'D-E': inch(48),
      'E-F': inch(96),
      'F-A': inch(108),
    };
    const room = roomOf({ walls: six, angles: { D: 270 }, diagonals: { 'A-C': inch(190) } });
    expect(room.adjustment).toMatchObject({ method: 'compass', redundancy: -2 });
    expect(room.adjustment.readings[6]!.used).toBe(Math.round(Math.hypot(inch(180), inch(60))));
  });
});

describe('the diagonal to measure next', () => {
  const corners: Point[] = [
    [0, 0],
    [inch(180), 0],
    [inch(180), inch(60)],
    [inch(96), inch(60)],
    [inch(96), inch(108)],
    [0, inch(108)],
  ];

  it('is the longest that lies inside the room', () => {
    // B-F is longer than A-C, but the inside corner D stands in its way only if it lies below the line.
    const below = 108 * (1 - 96 / 180);
    expect(below).toBeLessThan(60);
    const { walls } = readingsOf(corners);
    expect(roomOf({ walls, angles: { D: 270 } }).adjustment.measureNext).toBe('B-F');
  });

  it('is another one once that has been read', () => {
    const made = readingsOf(corners, [[1, 5]]);
    expect(roomOf({ ...made, angles: { D: 270 } }).adjustment.measureNext).toBe('A-C');
  });

  it('does not pass through a wall', () => {
    const deep = corners.map(([x, y]): Point => [x, y === inch(60) ? inch(40) : y]);
    const { walls } = readingsOf(deep);
    expect(roomOf({ walls, angles: { D: 270 } }).adjustment.measureNext).toBe('A-C');
  });
});

describe('any crooked room', () => {
  const shift = fc.integer({ min: -inch(1), max: inch(1) });
  const shifts = fc.array(fc.tuple(shift, shift), { minLength: 6, maxLength: 6 });
  const ell = (by: readonly (readonly [number, number])[]): Point[] =>
    [
      [0, 0],
      [180, 0],
      [180, 60],
      [96, 60],
      [96, 108],
      [0, 108],
    ].map(([x, y], i): Point => [inch(x!) + by[i]![0], inch(y!) + by[i]![1]]);
  const inside = [
    [0, 2],
    [0, 3],
    [0, 4],
    [1, 3],
    [3, 5],
    [1, 5],
  ] as const;

  it('is found again from walls and diagonals, with no angle but the inside corner said', () => {
    fc.assert(
      fc.property(shifts, (by) => {
        const truth = ell(by);
        const room = roomOf({ ...readingsOf(truth, inside), angles: { D: 270 } });
        expect(room.adjustment).toMatchObject({ method: 'leastSquares', redundancy: 3 });
        expect(room.adjustment.misclosure).toBeLessThan(20);
        sameShape(room, truth, 4);
      }),
      { seed: 4, numRuns: 50 },
    );
  });

  it('keeps its shape when its corners are counted from another', () => {
    const slip = fc.array(fc.integer({ min: -inch(1 / 4), max: inch(1 / 4) }), {
      minLength: 12,
      maxLength: 12,
    });
    const cases = fc.tuple(shifts, slip, fc.boolean(), fc.integer({ min: 1, max: 5 }));
    fc.assert(
      fc.property(cases, ([by, slips, withDiagonals, first]) => {
        const made = readingsOf(ell(by), withDiagonals ? inside : []);
        const off = (readings: Record<string, number>, k: number) =>
          Object.fromEntries(Object.entries(readings).map(([key, value], i) => [key, value + slips[i + k]!]));
        const spec = surface({
          walls: off(made.walls, 0),
          diagonals: off(made.diagonals, 6),
          angles: { D: 270 },
        });
        const turn = <T>(list: readonly T[]) => [...list.slice(first), ...list.slice(0, first)];
        const turned: SurfaceSpec = { ...spec, corners: turn(spec.corners), walls: turn(spec.walls) };
        const [one, other] = [roomOf(spec), roomOf(turned)];
        sameShape(other, turn(one.corners), 3);
        expect(other.adjustment.method).toBe(one.adjustment.method);
        expect(Math.abs(other.adjustment.misclosure - one.adjustment.misclosure)).toBeLessThanOrEqual(1);
      }),
      { seed: 5, numRuns: 40 },
    );
  });

  it('is the same room in a mirror when it is walked the other way', () => {
    fc.assert(
      fc.property(shifts, (by) => {
        const truth = ell(by);
        const mirrored = [...truth].reverse().map(([x, y]): Point => [-x, y]);
        const one = roomOf({ ...readingsOf(truth), angles: { D: 270 } });
        const other = roomOf({ ...readingsOf(mirrored), angles: { C: 270 } });
        expect(Math.abs(ringArea(one.corners) - ringArea(other.corners))).toBeLessThan(inch(576));
        sameShape(other, [...one.corners].reverse(), 3);
      }),
      { seed: 6, numRuns: 30 },
    );
  });

  it('closes with corrections that sum to the walk used less the walk read', () => {
    fc.assert(
      fc.property(shifts, (by) => {
        const { readings, perimeter } = roomOf({ ...readingsOf(ell(by)), angles: { D: 270 } }).adjustment;
        const total = (pick: (one: (typeof readings)[number]) => number) =>
          readings.reduce((sum, one) => sum + pick(one), 0);
        expect(total((one) => one.mean) + total((one) => one.correction)).toBe(perimeter);
      }),
      { seed: 7, numRuns: 30 },
    );
  });

  it('needs no angles where the diagonals fix it', () => {
    const truth = ell(new Array(6).fill([0, 0]));
    expect(roomOf(readingsOf(truth, inside)).adjustment.method).toBe('leastSquares');
  });
});

describe('a corner that is said to be straight', () => {
  it('takes part in a room that is otherwise fixed by its readings', () => {
    const walls = {
      'A-B': inch(96),
      'B-C': inch(60),
      'C-D': inch(96),
      'D-E': inch(20),
      'E-A': inch(40),
    };
    const diagonals = { 'A-C': inch(113.75), 'B-D': inch(112.625) };
    const room = roomOf({ walls, angles: { E: 180 }, diagonals });
    expect(room.adjustment).toMatchObject({ method: 'leastSquares', redundancy: 1 });
    const [, , , d, e] = room.corners;
    expect(Math.abs(e![0] / e![1] - d![0] / d![1])).toBeLessThan(1e-3);
  });
});
