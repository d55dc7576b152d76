import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Point } from '../../src/geometry/index.ts';
import { leastSquares } from '../../src/room/leastSquares.ts';
import type { Distance } from '../../src/room/observations.ts';

const distance = (a: Point, b: Point) => Math.hypot(b[0] - a[0], b[1] - a[1]);
const read = (from: number, to: number, mean: number, times = 1): Distance => ({
  id: `${from}-${to}`,
  kind: 'diagonal',
  from,
  to,
  read: new Array(times).fill(mean),
  mean,
  sd: 1016,
});
const pairs = (n: number) =>
  Array.from({ length: n }, (_, i) => Array.from({ length: i }, (_, j) => [j, i] as const)).flat();
const cost = (corners: readonly Point[], seen: readonly Distance[]) =>
  seen.reduce((sum, { from, to, mean, read }) => {
    return sum + read.length * (distance(corners[from]!, corners[to]!) - mean) ** 2;
  }, 0);

/** Determinant by expansion: slow, plain, and not the method under test. */
function determinant(m: readonly (readonly number[])[]): number {
  if (m.length === 1) return m[0]![0]!;
  const minor = (at: number) => m.slice(1).map((row) => row.filter((_, j) => j !== at));
  return m[0]!.reduce((sum, value, j) => sum + (j % 2 ? -1 : 1) * value * determinant(minor(j)), 0);
}

describe('least squares over distances', () => {
  // Six measured distances of a braced quadrilateral. Source: Zaki, El Kady and Ahmed, Archives of ISPRS XVII, part B3,
  // 1992, printed to a millimetre; here in tenths of one. Which is which
  // side follows from their lengths: no other order of the six comes within 1 m of lying in a plane.
  const braced = [
    read(0, 1, 13417850),
    read(1, 2, 21674370),
    read(2, 3, 15110140),
    read(3, 0, 19378870),
    read(0, 2, 21737150),
    read(1, 3, 27753640),
  ];

  it('brings a published braced quadrilateral to six distances that lie in one plane', () => {
    const start: Point[] = [
      [0, 0],
      [13417850, 0],
      [6800000, 20600000],
      [-8000000, 17600000],
    ];
    const { corners, redundancies, residuals } = leastSquares(start, braced)!;
    // Judge: the Cayley-Menger determinant of four points in a plane is nothing.
    const scaled = (i: number, j: number) => (distance(corners[i]!, corners[j]!) / 1e7) ** 2;
    const rows = [0, 1, 2, 3].map((i) => [1, ...[0, 1, 2, 3].map((j) => scaled(i, j))]);
    expect(determinant([[0, 1, 1, 1, 1], ...rows])).toBeCloseTo(0, 9);
    // One reading too many, so that all normalised residuals are equal in size.
    expect(redundancies.reduce((sum, one) => sum + one, 0)).toBeCloseTo(1, 9);
    const tests = residuals.map((v, i) => Math.abs(v) / Math.sqrt(redundancies[i]!));
    expect(Math.max(...tests) / Math.min(...tests)).toBeCloseTo(1, 3);
    // The surveyors worked to a few millimetres.
    expect(Math.max(...residuals.map(Math.abs))).toBeLessThan(100);
  });

  const place = fc.tuple(fc.integer({ min: -800, max: 800 }), fc.integer({ min: -800, max: 800 }));
  const quad = fc.tuple(place, place, place, place);
  const truth = (shifts: readonly (readonly [number, number])[]): Point[] =>
    [
      [0, 0],
      [30000, 0],
      [30000, 20000],
      [0, 20000],
    ].map(([x, y], i): Point => [x! + shifts[i]![0], y! + shifts[i]![1]]);
  const start: Point[] = [
    [0, 0],
    [30000, 0],
    [30000, 20000],
    [0, 20000],
  ];

  it('finds a crooked room again from exact distances', () => {
    fc.assert(
      fc.property(quad, (shifts) => {
        const corners = truth(shifts);
        const seen = pairs(4).map(([i, j]) => read(i, j, distance(corners[i]!, corners[j]!)));
        const found = leastSquares(start, seen)!;
        for (const { from, to, mean } of seen)
          expect(distance(found.corners[from]!, found.corners[to]!)).toBeCloseTo(mean, 2);
      }),
      { seed: 2, numRuns: 60 },
    );
  });

  it('leaves nothing to gain: no corner can be moved to fit the readings better', () => {
    const slips = fc.array(fc.integer({ min: -300, max: 300 }), { minLength: 6, maxLength: 6 });
    const times = fc.array(fc.integer({ min: 1, max: 3 }), { minLength: 6, maxLength: 6 });
    const nudge = fc.tuple(fc.integer({ min: 0, max: 3 }), place);
    fc.assert(
      fc.property(quad, slips, times, nudge, (shifts, slip, often, [corner, [dx, dy]]) => {
        const corners = truth(shifts);
        const seen = pairs(4).map(([i, j], k) =>
          read(i, j, distance(corners[i]!, corners[j]!) + slip[k]!, often[k]!),
        );
        const found = leastSquares(start, seen)!.corners;
        const nudged = found.map((p, i): Point => (i === corner ? [p[0] + dx / 10, p[1] + dy / 10] : p));
        expect(cost(nudged, seen)).toBeGreaterThanOrEqual(cost(found, seen) - 1e-3);
      }),
      { seed: 3, numRuns: 100 },
    );
  });

  it('refuses readings that leave a part of the room free to swing', () => {
    const walls = [read(0, 1, 30000), read(1, 2, 20000), read(2, 3, 30000), read(3, 0, 20000)];
    expect(leastSquares(start, walls)).toBeUndefined();
    expect(leastSquares(start, [...walls, read(0, 1, 30000)])).toBeUndefined();
    expect(leastSquares(start, [...walls, read(0, 2, 36000)])).toBeDefined();
  });
});
