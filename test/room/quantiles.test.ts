import { describe, expect, test } from 'vitest';
import { chiSquareLimit, studentLimit, tauLimit } from '../../src/room/quantiles.ts';

describe('quantiles', () => {
  // Source: NIST/SEMATECH e-Handbook of Statistical Methods, table 1.3.6.7.4, upper critical values of chi-square (from memory).
  test.each([
    [1, 3.841, 6.635],
    [2, 5.991, 9.21],
    [5, 11.07, 15.086],
    [10, 18.307, 23.209],
    [30, 43.773, 50.892],
    [100, 124.342, 135.807],
  ])('of chi-square with %i degrees of freedom are those of the tables', (freedom, at95, at99) => {
    expect(chiSquareLimit(0.95, freedom)).toBeCloseTo(at95, 3);
    expect(chiSquareLimit(0.99, freedom)).toBeCloseTo(at99, 3);
  });

  // Source: the same, table 1.3.6.7.2, critical values of Student's t (from memory).
  test.each([
    [1, 12.706, 63.657],
    [2, 4.303, 9.925],
    [5, 2.571, 4.032],
    [10, 2.228, 3.169],
    [30, 2.042, 2.75],
  ])('of Student’s t with %i degrees of freedom are those of the tables', (freedom, at95, at99) => {
    expect(studentLimit(0.95, freedom)).toBeCloseTo(at95, 3);
    expect(studentLimit(0.99, freedom)).toBeCloseTo(at99, 3);
  });

  // Arithmetic: with two degrees of freedom tau is √2 times the sine of an angle that is evenly spread.
  test.each([0.5, 0.95, 0.99])('of tau with two degrees of freedom follow from an angle: %f', (share) => {
    expect(tauLimit(share, 2)).toBeCloseTo(Math.SQRT2 * Math.sin((share * Math.PI) / 2), 9);
  });

  test('of tau come near those of the normal distribution where there is plenty of freedom', () => {
    expect(tauLimit(0.999, 2001)).toBeCloseTo(3.29, 2);
  });
});
