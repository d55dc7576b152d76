import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { makeFlatness } from '../../src/materials/makeFlatness.ts';
import { departures, feet, gridMean, inches, straightedgeChecks } from '../../src/trade/index.ts';

/** A grid in sixteenths of an inch. */
const grid = (every: number, rows: readonly (readonly (number | null)[])[]) => ({
  surface: 'floor',
  walls: ['A-B', 'D-A'] as const,
  first: [0, 0] as const,
  every,
  heights: rows.map((row) => row.map((one) => (one === null ? null : inches(one / 16)))),
});
const floor = { longest: inches(12), areaM2: 10, system: 'inches' as const };

describe('flatness read on a grid', () => {
  test('a floor that slopes evenly is flat: geometry', () => {
    const sloped = grid(
      feet(1),
      [0, 1, 2, 3].map((row) => [0, 1, 2, 3, 4].map((n) => 3 * row - 2 * n)),
    );
    const made = makeFlatness(sloped, floor);
    expect(made.class).toBe('tight');
    expect(made.patchLitres).toBe(0);
    expect(made.under.every(({ pass }) => pass)).toBe(true);
  });

  test.each([
    // ANSI A108.01: 1/4 in in 10 ft for sides under 15 in, 1/8 in from 15 in.
    [12, 4, true, 'ordinary'],
    [12, 5, false, 'neither'],
    [15, 2, true, 'tight'],
    [15, 3, false, 'ordinary'],
  ])(
    'a side of %i in and a hollow of %i/16 in half way along 10 ft: %s, keeps %s',
    (side, depth, pass, kept) => {
      const made = makeFlatness(grid(feet(5), [[0, -depth, 0]]), { ...floor, longest: inches(side) });
      expect([made.under[0]!.pass, made.class]).toEqual([pass, kept]);
      expect(made.under[0]!.worst).toMatchObject({
        kind: 'hollow',
        depth: inches(depth / 16),
        row: 1,
        number: 2,
      });
    },
  );

  test('a hump is told as a hump and takes no fill', () => {
    const made = makeFlatness(grid(feet(2), [[0, 0, 6, 0, 0]]), floor);
    expect(made.under[0]!.worst).toMatchObject({ kind: 'hump', row: 1, number: 3 });
  });

  test('readings too far apart for a straightedge are not judged by it', () => {
    const made = makeFlatness(grid(feet(2), [[0, 9, 0]]), floor);
    expect(made.under.map(({ worst }) => worst === undefined)).toEqual([false, true]);
  });

  test('a single row of two readings tells no class', () => {
    expect(makeFlatness(grid(feet(2), [[0, 9]]), floor).class).toBe('unknown');
  });

  test('fill by hand: 1/16 in on average over 10 m2 is 15.875 L, two bags of 8 L (arithmetic)', () => {
    const dished = grid(feet(2), [[0, 0, 0], [0, -4, 0], [0, 0, 0]]); // biome-ignore format: a grid
    const made = makeFlatness(dished, { ...floor, bagLitres: 8 });
    expect(made.patchMean).toBe(inches(1 / 16));
    expect(made.patchLitres).toBeCloseTo(15.875, 6);
    expect([made.patchBags, made.levelBags]).toEqual([2, 2]);
  });

  test('what cannot be read is left out', () => {
    const made = makeFlatness(grid(feet(2), [[0, null, 0], [0, -2, 0]]), floor); // biome-ignore format: a grid
    expect(made.under[0]!.worst).toMatchObject({ row: 2, number: 2, depth: inches(2 / 16) });
  });
});

const anyRow = fc.array(fc.integer({ min: -4000, max: 4000 }), { minLength: 3, maxLength: 9 });

describe('departures of any row', () => {
  test('none is larger than the range of the row, and a plane added changes none by more than rounding', () => {
    fc.assert(
      fc.property(anyRow, fc.integer({ min: -500, max: 500 }), (row, slope) => {
        const plain = departures([row], feet(1), feet(10));
        const sloped = departures([row.map((one, i) => one + slope * i)], feet(1), feet(10));
        const range = Math.max(...row) - Math.min(...row);
        expect(plain.every(({ depth }) => depth <= range)).toBe(true);
        plain.forEach(({ depth }, i) => {
          expect(Math.abs(depth - sloped[i]!.depth)).toBeLessThanOrEqual(1);
        });
      }),
      { seed: 5, numRuns: 200 },
    );
  });

  test('the mean of a grid that is the same everywhere is that', () => {
    expect(gridMean([[7, 7], [7, 7], [7, 7]])).toBe(7); // biome-ignore format: a grid
  });
});

test('straightedge checks: one in 100 sq ft, two at least (ACI 117, from memory)', () => {
  expect([1, 18.58, 18.6, 37.2].map(straightedgeChecks)).toEqual([2, 2, 3, 5]);
});
