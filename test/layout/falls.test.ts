import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { distancePointSegment, type Point, shapeArea } from '../../src/geometry/index.ts';
import type { ObstacleSpec, PatternSpec } from '../../src/job/Job.ts';
import { isFold } from '../../src/room/isFold.ts';
import { coverTheField } from '../support/coverTheField.ts';
import { layOut } from '../support/layOut.ts';
import type { RandomRoom } from '../support/randomRoom.ts';
import { jobOf, surfaceOf, wallFacts } from '../support/surfaceOf.ts';
import { mirrored, renumbered } from '../support/transformSurface.ts';

const IN = 8128;
const JOINT = 1016;
/** Showers with a drain: 12 in `npm test`, 300 in the long run. */
const ROOMS = process.env.LONG === '1' ? 300 : 12;

const patterns: readonly Partial<PatternSpec>[] = [
  { name: 'straight' },
  { name: 'straight', turnedDeg: 45 },
  { name: 'running', offset: { numerator: 1, denominator: 3 } },
  { name: 'herringbone' },
];

/** A shower that leans a little, its round or square drain somewhere in its middle, tile cut along the folds. */
const showers: fc.Arbitrary<RandomRoom> = fc
  .record({
    wide: fc.integer({ min: 34 * IN, max: 90 * IN }),
    deep: fc.integer({ min: 34 * IN, max: 90 * IN }),
    lean: fc.integer({ min: -IN, max: IN }),
    place: fc.tuple(
      fc.double({ min: 0.35, max: 0.65, noNaN: true }),
      fc.double({ min: 0.35, max: 0.65, noNaN: true }),
    ),
    round: fc.boolean(),
    side: fc.integer({ min: 6 * IN, max: 13 * IN }),
    pattern: fc.constantFrom(...patterns),
  })
  .map(({ wide, deep, lean, place, round, side, pattern }) => {
    const from = [
      { wall: 'A-B', distance: Math.round(deep * place[1]) },
      { wall: 'D-A', distance: Math.round(wide * place[0]) },
    ] as const;
    const shape: ObstacleSpec['shape'] = round
      ? { kind: 'circle', diameter: 4 * IN, from }
      : { kind: 'rectangle', along: 4 * IN, out: 4 * IN, from };
    const drain = { ...wallFacts({ meets: 'drain', gap: JOINT, gapMax: 2 * JOINT }), name: 'drain', shape };
    const corners = [
      [0, 0],
      [wide, 0],
      [wide + lean, deep],
      [0, deep],
    ] as const;
    const falls = { to: 'drain', from: ['A-B', 'B-C', 'C-D', 'D-A'], folds: 'cut', joint: JOINT } as const;
    return {
      kind: `${pattern.name} ${pattern.turnedDeg ?? 0}`,
      job: jobOf(pattern.name === 'herringbone' ? 2 * side + JOINT : side, side, JOINT),
      surface: surfaceOf([...corners], { obstacles: [drain], pattern, over: { falls } }),
    } as RandomRoom;
  });

const named = fc
  .sample(showers, { seed: 20270911, numRuns: ROOMS })
  .map((room, i) => [`${i} ${room.kind}`, room] as const);

describe('a floor whose tile is cut along the folds to its drain', () => {
  coverTheField(named);

  test.each(named)(
    '%s: no tile crosses a fold, and along it tile meets tile at the joint',
    (_, { job, surface }) => {
      const { frame, pieces } = layOut(job, surface).layout;
      const { folds } = frame.falls!;
      const off = (point: Point) =>
        Math.min(...folds.map(({ from, to }) => distancePointSegment(point, from, to)));
      // A side between two corners on either side of a fold would have its crossing on it.
      const corners = pieces.flatMap(({ shape }) => [...shape.outer, ...shape.holes.flat()]);
      expect(Math.min(...corners.map(off))).toBeGreaterThanOrEqual(JOINT / 2 - 3);
      const across = pieces.flatMap(({ id, shape: { outer } }) =>
        folds.some(({ from, to }) => {
          const sides = outer.map(([x, y]) =>
            Math.sign((to[0] - from[0]) * (y - from[1]) - (to[1] - from[1]) * (x - from[0])),
          );
          const beyond = outer.every(
            ([x, y]) => (x - from[0]) * (to[0] - from[0]) + (y - from[1]) * (to[1] - from[1]) > 0,
          );
          return beyond && sides.includes(1) && sides.includes(-1);
        })
          ? [id]
          : [],
      );
      expect(across).toEqual([]);
    },
  );

  test.each(named)(
    '%s: lacks only the joints along its folds of what lies there without them',
    (_, { job, surface }) => {
      // The room's field: with other folds the start is another, and a tile kept whole may cover some of a gap.
      const area = (spec: typeof surface) =>
        layOut(job, spec).layout.frame.field.reduce((sum, shape) => sum + shapeArea(shape), 0);
      const drawn = { ...surface, falls: { ...surface.falls!, folds: 'drawn' as const } };
      const { frame } = layOut(job, surface).layout;
      const strips = frame.obstacles.filter(isFold);
      const joints = strips.reduce((sum, { ring }) => sum + shapeArea({ outer: ring, holes: [] }), 0);
      const lacks = area(drawn) - area(surface);
      expect(strips).toHaveLength(4);
      expect(lacks).toBeGreaterThan(0);
      expect(lacks).toBeLessThanOrEqual(joints * 1.001);
    },
  );

  test.each(named)('%s: is the same floor seen from another corner, and mirrored', (_, { job, surface }) => {
    const count = (spec: typeof surface) => {
      const { pieces } = layOut(job, spec).layout;
      return [pieces.length, pieces.filter(({ whole }) => whole).length];
    };
    const planes = (spec: typeof surface) =>
      layOut(job, spec)
        .layout.frame.falls!.planes.map(({ run }) => run)
        .sort((a, b) => a - b);
    const other = renumbered(surface, 1);
    const own = planes(surface);
    // Corners are rounded to ticks in each room's own frame.
    expect(Math.max(...planes(other).map((run, i) => Math.abs(run - own[i]!)))).toBeLessThanOrEqual(1);
    if (surface.pattern.name === 'straight' && surface.pattern.turnedDeg === 0) {
      expect(count(other)).toEqual(count(surface));
      const tile = job.tiles[0]!;
      expect(count(mirrored(surface, tile.length + JOINT))).toEqual(count(surface));
    }
  });
});
