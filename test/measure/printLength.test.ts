import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { figure, mean, printLength, sawDown, sawNearest, sawUp, spread } from '../../src/measure/index.ts';

describe('rounding to the saw', () => {
  const cases = fc.tuple(fc.integer({ min: -16000000, max: 16000000 }), fc.constantFrom(508, 254, 320, 160));

  it('down never adds, up never takes off, both by less than a step, both whole steps', () => {
    fc.assert(
      fc.property(cases, ([ticks, step]) => {
        const [down, up] = [sawDown(ticks, step), sawUp(ticks, step)];
        expect(down <= ticks && ticks < down + step).toBe(true);
        expect(up >= ticks && ticks > up - step).toBe(true);
        expect([Math.abs(down % step), Math.abs(up % step)]).toEqual([0, 0]);
      }),
      { seed: 1, numRuns: 1000 },
    );
  });

  it('to the nearest is off by half a step at most, a half going up', () => {
    fc.assert(
      fc.property(cases, ([ticks, step]) => {
        const off = sawNearest(ticks, step) - ticks;
        expect(off > -step / 2 && off <= step / 2).toBe(true);
      }),
      { seed: 2, numRuns: 1000 },
    );
  });

  it('leaves a whole step alone and never gives a negative zero', () => {
    expect([sawDown(5080, 508), sawUp(5080, 508), sawNearest(5080, 508)]).toEqual([5080, 5080, 5080]);
    expect([sawDown(0, 508), sawUp(0, 508), sawNearest(-100, 508), sawUp(-100, 508)]).toEqual([0, 0, 0, 0]);
  });
});

describe('printing a length', () => {
  it.each([
    [62230, '7 21/32 in'],
    [61976, '7 5/8 in'],
    [4064, '1/2 in'],
    [127, '1/64 in'],
    [81280, '10 in'],
    [0, '0 in'],
    [60, '0 in'],
    [64, '1/64 in'],
    [-61976, '−7 5/8 in'],
    [-508, '−1/16 in'],
    [798576, '98 1/4 in'],
  ])('%i ticks in inches is %s', (ticks, text) => expect(printLength(ticks, 'inches')).toBe(text));

  it.each([
    [798576, '8 ft 2 1/4 in'],
    [780288, '8 ft'],
    [782320, '8 ft 0 1/4 in'],
    [97535, '1 ft'],
    [97409, '11 63/64 in'],
    [-798576, '−8 ft 2 1/4 in'],
  ])('%i ticks in feet is %s', (ticks, text) =>
    expect(printLength(ticks, 'inches', { feet: true })).toBe(text),
  );

  it.each([
    [92640, '289.5 mm'],
    [92800, '290 mm'],
    [798400, '2495 mm'],
    [127, '0.4 mm'],
    [-160, '−0.5 mm'],
    [10, '0 mm'],
  ])('%i ticks in millimetres is %s', (ticks, text) => expect(printLength(ticks, 'mm')).toBe(text));

  it('goes as fine as it is asked to, to the nearest or down', () => {
    expect(printLength(127, 'mm', { finest: 1 })).toBe('0.396875 mm');
    expect(printLength(62230, 'inches', { finest: 508 })).toBe('7 11/16 in');
    expect(printLength(62230, 'inches', { finest: 508, round: 'down' })).toBe('7 5/8 in');
    expect(printLength(92640, 'mm', { finest: 320, round: 'down', unit: false })).toBe('289');
  });

  it('reduces every fraction, as big figures too', () => {
    for (let n = 1; n < 64; n++) {
      const { numerator, denominator } = figure(8128 + n * 127, 'inches');
      expect(Number(numerator) / Number(denominator)).toBe(n / 64);
      expect(Number(numerator) % 2).toBe(1);
    }
  });
});

describe('some readings of one thing', () => {
  it('have a mean that is rounded once, and a spread', () => {
    expect(mean([1, 2])).toBe(2);
    expect(mean([96012, 95885, 96012])).toBe(95970);
    expect([spread([96012, 95885, 96266]), spread([5]), spread([])]).toEqual([381, 0, 0]);
    expect(mean([])).toBeNaN();
  });
});
