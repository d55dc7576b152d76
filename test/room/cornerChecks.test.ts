import { describe, expect, it } from 'vitest';
import type { Point } from '../../src/geometry/index.ts';
import { makeAdjustment } from '../../src/room/makeAdjustment.ts';
import { chance } from '../support/chance.ts';
import { mirrored, renumbered } from '../support/transformSurface.ts';
import { cornerErrors, crooked, ell, ellDiagonals, type Plan, quad, readRoom } from './support/simulate.ts';
import { box, inch, problemsOf, roomOf, type Wish } from './support/surface.ts';

const within = (corners: readonly Point[], truth: readonly Point[], ticks: number) => {
  for (const error of cornerErrors(corners, truth)) expect(error).toBeLessThanOrEqual(ticks);
};

describe('checks of corners', () => {
  it('fix a room of four walls with one check, and say by how much it is not square', () => {
    // By hand: 36 and 48 with 59 between them make a corner of acos((36² + 48² − 59²) / (2 · 36 · 48)) = 88.05 degrees.
    const degrees = (Math.acos((36 ** 2 + 48 ** 2 - 59 ** 2) / (2 * 36 * 48)) * 180) / Math.PI;
    const { adjustment } = roomOf({
      walls: box(100, 80),
      cornerChecks: [{ corner: 'B', legs: [36, 48], read: '59 in' }],
    });
    expect(adjustment).toMatchObject({ method: 'leastSquares', redundancy: 0 });
    const angles = adjustment.corners.map(({ angleDeg }) => angleDeg);
    expect(angles[1]).toBeCloseTo(degrees, 3);
    expect(angles[0]).toBeCloseTo(180 - degrees, 3);
    expect(adjustment.readings.at(-1)).toMatchObject({ id: 'B', kind: 'cornerCheck', correction: 0 });
  });

  it('find a crooked L again from its walls alone, the corner that juts in measured across the wall', () => {
    const by = chance(21);
    const truth = crooked(ell, by);
    const spec = readRoom(truth, { corners: ell, diagonals: [], times: 1, checks: [36, 48] }, 0, by);
    const { corners, adjustment } = makeAdjustment(spec);
    expect(adjustment).toMatchObject({ method: 'leastSquares', redundancy: 3 });
    within(corners, truth, 6);
  });
});

describe('a base line', () => {
  const plan: Plan = { corners: ell, diagonals: [], times: 1, baseLine: true };
  const by = chance(22);
  const truth = crooked(ell, by);
  const spec = readRoom(truth, plan, 0, by);

  it('finds a crooked room again, with no angle said', () => {
    const corners = spec.corners.map((corner) => ({ ...corner, angleDeg: 90 }));
    const made = makeAdjustment({ ...spec, corners });
    expect(made.adjustment).toMatchObject({ method: 'leastSquares', redundancy: 6 });
    within(made.corners, truth, 4);
  });

  it.each([
    ['offsets counted to its other side', (off: number, along: number) => ({ off: 0 - off, along })],
    ['its zero at its other end', (off: number, along: number) => ({ off, along: inch(300) - along })],
  ])('gives the same room with %s', (_, turn) => {
    const baseLine = spec.baseLine.map((one) => ({ ...one, ...turn(one.off, one.along) }));
    const made = makeAdjustment({ ...spec, baseLine });
    within(made.corners, truth, 4);
  });

  it('names a slip in an offset', () => {
    const more: Plan = { corners: ell, diagonals: ellDiagonals, times: 2, baseLine: true };
    const exact = readRoom(truth, more, 0, chance(23));
    const baseLine = exact.baseLine.map((one) =>
      one.corner === 'C' ? { ...one, off: one.off + inch(2) } : one,
    );
    const { suspects } = makeAdjustment({ ...exact, baseLine }).adjustment;
    expect(suspects).toMatchObject([{ ids: ['C:off'], verdict: 'named' }]);
  });

  it('of two corners tells what a wall between them tells', () => {
    const walls = box(96, 60);
    const baseLine = [
      { corner: 'A', along: 0, off: inch(12) },
      { corner: 'C', along: inch(96), off: inch(72) },
    ];
    expect(roomOf({ walls, baseLine }).adjustment).toMatchObject({ method: 'leastSquares', redundancy: 0 });
  });
});

describe('wrong checks and offsets are problems with their place', () => {
  const check = (corner: string, legs: readonly [number, number], read: string): Wish => ({
    walls: box(100, 60),
    cornerChecks: [{ corner, legs, read }],
  });
  const lone = [{ corner: 'A', along: 0, off: 0 }];
  const nowhere = [...lone, { corner: 'X', along: 0, off: 0 }];
  it.each<readonly [string, Wish, string, string, string]>([
    [
      'a distance longer than both legs',
      check('B', [36, 48], '8 ft'),
      'cornerCheckReach',
      'corner checks.B',
      '8 ft',
    ],
    [
      'one shorter than their difference',
      check('B', [36, 48], '11 in'),
      'cornerCheckReach',
      'corner checks.B',
      '11 in',
    ],
    [
      'a leg longer than its wall',
      check('B', [48, 72], '86 in'),
      'cornerLegTooLong',
      'corner checks.B',
      '6 ft',
    ],
    ['a check of no corner', check('X', [36, 48], '5 ft'), 'unknownCorner', 'corner checks.X', 'X'],
    ['a line to one corner', { walls: box(100, 60), baseLine: lone }, 'baseLineOfOne', 'base line.A', 'A'],
    ['a line to no corner', { walls: box(100, 60), baseLine: nowhere }, 'unknownCorner', 'base line.X', 'X'],
  ])('%s', (_, wish, code, path, found) => {
    const problems = problemsOf(wish);
    expect(problems.map((one) => [one.code, one.path.slice(1).join('.'), one.found])).toEqual([
      [code, path, found],
    ]);
  });
});

describe('a room looked at differently', () => {
  const figures = ({ corners, ...rest }: ReturnType<typeof makeAdjustment>['adjustment']) => ({
    counts: [rest.redundancy, rest.degreesOfFreedom, rest.suspects.length],
    verdicts: rest.suspects.map(({ verdict, kind }) => `${verdict} ${kind}`).sort(),
    sizes: [
      rest.misclosure,
      rest.next?.sdNow ?? 0,
      rest.next?.sdThen ?? 0,
      ...rest.suspects.map(({ slip }) => slip).sort((a, b) => a - b),
      ...corners.map(({ sd }) => sd!).sort((a, b) => a - b),
      ...corners.map(({ lean }) => lean?.by ?? 0).sort((a, b) => a - b),
      ...rest.readings.map(({ smallestSlip }) => smallestSlip ?? 0).sort((a, b) => a - b),
    ],
  });
  const plans: Readonly<Record<string, Plan>> = {
    'a room of four walls': {
      corners: quad,
      diagonals: [
        [0, 2],
        [1, 3],
      ],
      times: 1,
    },
    'an L read twice': { corners: ell, diagonals: ellDiagonals, times: 2 },
    'an L with corner checks and a base line': {
      corners: ell,
      diagonals: [[0, 2]],
      times: 1,
      checks: [36, 44],
      baseLine: true,
    },
  };

  it.each(Object.entries(plans))(
    '%s: keeps its figures turned, mirrored and with other corners first',
    (_, plan) => {
      const by = chance(31);
      const spec = readRoom(crooked(plan.corners, by), plan, inch(1 / 8), by);
      const walls = spec.walls.map((wall, i) => {
        return i === 1
          ? { ...wall, readings: wall.readings.map((read, k) => (k === 0 ? read + inch(2) : read)) }
          : wall;
      });
      const slipped = { ...spec, walls };
      const own = figures(makeAdjustment(slipped).adjustment);
      for (const other of [renumbered(slipped, 1), renumbered(slipped, 3), mirrored(slipped, inch(12))]) {
        const found = figures(makeAdjustment(other).adjustment);
        expect(found.counts).toEqual(own.counts);
        expect(found.verdicts).toEqual(own.verdicts);
        for (const [i, size] of found.sizes.entries())
          expect(Math.abs(size - own.sizes[i]!)).toBeLessThanOrEqual(2);
      }
    },
  );
});
