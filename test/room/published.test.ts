import { describe, expect, it } from 'vitest';
import type { Point } from '../../src/geometry/index.ts';
import { leastSquares } from '../../src/room/leastSquares.ts';
import type { Distance } from '../../src/room/observations.ts';
import { alignFirst } from '../../src/room/traverse.ts';

const read = (from: number, to: number, mean: number, sd: number): Distance => ({
  id: `${from}-${to}`,
  kind: 'diagonal',
  from,
  to,
  read: [mean],
  mean,
  sd,
});
const distance = (a: Point, b: Point) => Math.hypot(b[0] - a[0], b[1] - a[1]);
const aligned = (points: readonly Point[]) => alignFirst(points);

describe('published adjustments', () => {
  // Source of the readings: Ghilani and Wolf, Adjustment Computations, example 14.2, three distances to one unknown station. The
  // residuals are recorded; the book's own were not seen.
  it('trilateration of one point from three known ones', () => {
    const known: Point[] = [
      [865.4, 4527.15],
      [2432.55, 2047.25],
      [2865.22, 27.15],
    ];
    const start = aligned([...known, [6861, 3728]]);
    const fast = [0, 1, 2].flatMap((i) =>
      [0, 1, 2].filter((j) => j > i).map((j) => read(i, j, distance(known[i]!, known[j]!), 1e-5)),
    );
    const seen = [6049, 4736.83, 5446.49].map((one, i) => read(i, 3, one, 1));
    const { residuals } = leastSquares(start, [...fast, ...seen], { corners: [], sd: 1 })!;
    const own = residuals.slice(3);
    expect(own.map((v) => v.toFixed(3))).toEqual(['-0.037', '0.077', '-0.047']);
    expect(Math.sqrt(own.reduce((sum, v) => sum + v * v, 0)).toFixed(3)).toBe('0.098');
  });

  // Source of the readings: Zaki, El Kady and Ahmed, Archives of ISPRS XVII, part B3, 1992. The corrections are recorded: they agree
  // with those of the one condition that six distances in a plane must meet, worked out apart.
  it('a braced quadrilateral of six distances', () => {
    const [x1, x2, x3, x4, x5, x6] = [1341.785, 2775.364, 2167.437, 1937.887, 2173.715, 1511.014] as const;
    const seen = [
      read(0, 1, x1, 1),
      read(1, 3, x2, 1),
      read(1, 2, x3, 1),
      read(3, 0, x4, 1),
      read(0, 2, x5, 1),
      read(2, 3, x6, 1),
    ];
    const start: Point[] = [
      [0, 0],
      [x1, 0],
      [680, 2060],
      [-800, 1760],
    ];
    const { residuals } = leastSquares(start, seen, { corners: [], sd: 1 })!;
    const printed = ['-0.0035', '0.0062', '-0.0041', '-0.0049', '0.0047', '-0.0028'];
    expect(residuals.map((v) => v.toFixed(4))).toEqual(printed);
  });
});
