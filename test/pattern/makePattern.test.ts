import { describe, expect, test } from 'vitest';
import type { PatternSpec } from '../../src/job/Job.ts';
import { makePattern } from '../../src/pattern/index.ts';
import { jobOf } from '../support/surfaceOf.ts';

const make = (spec: Partial<PatternSpec>, length = 1000, width = 500, joint = 10) =>
  makePattern(
    { name: 'running', tile: 'field', turnedDeg: 0, along: 'A-B', ...spec },
    jobOf(length, width, joint).tiles,
    joint,
  );

const shifts = (spec: Partial<PatternSpec>, length?: number) =>
  make(spec, length).tiles.map(({ ring }) => ring[0]![0]);

describe('straight lay', () => {
  test('repeats by tile and joint, joints running through both ways', () => {
    const { a, b, tiles, straightX, straightY } = make({ name: 'straight' });
    expect({ a, b, straightX, straightY }).toEqual({
      a: [1010, 0],
      b: [0, 510],
      straightX: true,
      straightY: true,
    });
    expect(tiles).toHaveLength(1);
  });
});

describe('running bond', () => {
  // Common practice, no source: each course by a half, a third … of tile and joint against the one below.
  test.each([
    [{ numerator: 1, denominator: 2 }, [0, 505]],
    [{ numerator: 1, denominator: 3 }, [0, 337, 673]],
    [{ numerator: 2, denominator: 3 }, [0, 673, 337]],
    [{ numerator: 3, denominator: 10 }, [0, 303, 606, 909, 202, 505, 808, 101, 404, 707]],
  ])('an offset of %o shifts the courses by %o', (offset, expected) => {
    expect(shifts({ offset })).toEqual(expected);
  });

  test('is half bond unless the job says otherwise', () => expect(shifts({})).toEqual([0, 505]));

  test('goes back and forth where courses alternate', () => {
    expect(shifts({ offset: { numerator: 1, denominator: 3 }, stepping: 'alternating' })).toEqual([0, 337]);
  });

  test('a length that steps is the second repeat vector', () => {
    expect(make({ offset: { length: 200 } }).b).toEqual([200, 510]);
    expect(make({ offset: { length: 200 } }).tiles).toHaveLength(1);
  });

  test('a length that alternates repeats every second course', () => {
    expect(shifts({ offset: { length: 200 }, stepping: 'alternating' })).toEqual([0, 200]);
    expect(make({ offset: { length: 200 }, stepping: 'alternating' }).b).toEqual([0, 1020]);
  });

  test('rounds each course once: after a whole repeat it stands exactly where it began', () => {
    const { a, b, tiles } = make({ offset: { numerator: 1, denominator: 7 } }, 1003);
    expect(b).toEqual([0, 7 * 510]);
    tiles.forEach(({ ring }, course) => {
      expect(Math.abs(ring[0]![0] - (((course * a[0]) / 7) % a[0]))).toBeLessThanOrEqual(0.5);
    });
  });

  test('a tile the job does not list is refused by name', () => {
    expect(() => make({ tile: 'border' })).toThrow(/'border'/);
  });
});
