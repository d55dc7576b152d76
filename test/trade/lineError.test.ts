import { describe, expect, test } from 'vitest';
import { boundOf, markSpread, normalShare, squareSpread, turnSpread } from '../../src/trade/index.ts';

const IN = 8128;
const OVER = 120 * IN;
const [SIXTEENTH, THIRTYSECOND] = [IN / 16, IN / 32];
/** A median is half of all: 0.6745 standard deviations of a normal spread, by its table. */
const MEDIAN = 0.6745;

describe('a normal spread', () => {
  // Table of the normal distribution, as in Abramowitz and Stegun, table 26.1.
  test.each([
    [0, 0.5],
    [1, 0.8413447],
    [1.96, 0.9750021],
    [-2.5, 0.0062097],
  ])('lies below %f deviations in a share of %f', (deviations, share) => {
    expect(normalShare(deviations)).toBeCloseTo(share, 6);
  });

  test('is kept by 1.96 deviations in 95 of 100 cases, two at once by 2.236', () => {
    expect(boundOf([{ bias: 0, sd: 1 }])).toBeCloseTo(1.96, 3);
    // Arithmetic: each must hold in √0.95 of all cases.
    expect(boundOf([{ bias: 0, sd: 1 }, { bias: 0, sd: 1 }])).toBeCloseTo(2.2365, 3); // biome-ignore format: two on a line
  });
});

describe('a line through two marks that are rounded to 1/16 in and read to 1/32 in', () => {
  const each = markSpread(THIRTYSECOND, SIXTEENTH);

  // Arithmetic, from the spread of a uniform error, step / √12.
  test.each([
    [140, 0.03, 0.086],
    [48, 0.086, 0.25],
  ])('%i in apart turns %f in over 10 ft at the median, %f in in 95 of 100 cases', (apart, median, most) => {
    const sd = turnSpread([each, each], apart * IN, OVER) / IN;
    expect(sd * MEDIAN).toBeCloseTo(median, 2);
    expect(boundOf([{ bias: 0, sd }])).toBeCloseTo(most, 2);
  });
});

describe('a line squared by a 3-4-5', () => {
  // Arithmetic: the angle opposite the diagonal c turns by c·dc / ab.
  test.each([
    [36, 48, 0.36],
    [48, 64, 0.27],
    [72, 96, 0.18],
  ])(
    'of %i and %i in, all sides read to 1/32 in, turns %f in over 10 ft in 95 of 100 cases',
    (a, b, most) => {
      const sd = squareSpread([a * IN, b * IN], THIRTYSECOND, OVER) / IN;
      expect(boundOf([{ bias: 0, sd }])).toBeCloseTo(most, 2);
    },
  );
});
