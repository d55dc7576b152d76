import { describe, expect, test } from 'vitest';
import { pickRatio, pickScale, ratios } from '../../src/drawing/pickScale.ts';

const mm = (width: number, height: number) => ({ width: width * 320, height: height * 320 });

describe('a scale is the largest of the stated list that fits', () => {
  test.each([
    [mm(1000, 800), 'mm', 10],
    [mm(1900, 800), 'mm', 15],
    [mm(2438.4, 1000), 'inches', 16],
    [mm(20000, 800), 'mm', 200],
    [mm(40000, 800), 'mm', undefined],
  ] as const)('%o in %s', (size, system, ratio) => {
    expect(pickRatio(size, { widthMm: 180, heightMm: 250 }, system)).toBe(ratio);
  });

  test('a page turns only where that shows more', () => {
    const spaces = { portrait: { widthMm: 180, heightMm: 240 }, landscape: { widthMm: 240, heightMm: 180 } };
    expect(pickScale(mm(4500, 1500), spaces, 'mm')).toEqual({ ratio: 20, orientation: 'landscape' });
    expect(pickScale(mm(1500, 1500), spaces, 'mm')).toEqual({ ratio: 10, orientation: 'portrait' });
  });

  test('inch scales are whole fractions of a foot rule, in 1/32 in to 3 in to the foot', () => {
    expect(ratios.inches.every((ratio) => Number.isInteger((12 / ratio) * 32))).toBe(true);
  });
});
