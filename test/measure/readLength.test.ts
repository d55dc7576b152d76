import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  printLength,
  readLength,
  readPair,
  TICKS_PER_FOOT,
  TICKS_PER_INCH,
  TICKS_PER_MM,
} from '../../src/measure/index.ts';

describe('ticks', () => {
  // NIST Handbook 44, Appendix C: 1 inch = 25.4 millimeters (exactly), 1 foot = 0.3048 meter (exactly).
  it('hold the inch, the foot and the millimetre exactly', () => {
    expect(TICKS_PER_INCH * 10).toBe(254 * TICKS_PER_MM);
    expect(TICKS_PER_FOOT * 10).toBe(3048 * TICKS_PER_MM);
  });

  it('hold every mark of a rule: 1/64 in is 127, 1/16 in 508, 0.1 mm 32', () => {
    expect([TICKS_PER_INCH / 64, TICKS_PER_INCH / 16, TICKS_PER_MM / 10]).toEqual([127, 508, 32]);
  });
});

describe('reading a length', () => {
  const same = 98.25 * 8128;
  it.each([
    '8 ft 2 1/4 in',
    '8ft 2 1/4in',
    '8 FT 2-1/4 IN',
    '8 feet 2 1/4 inches',
    '8\'2 1/4"',
    '8\' 2 1/4"',
    '8\'-2 1/4"',
    '8’2 1/4”',
    '8′ 2¼″',
    "8' 2 1/4''",
    "8'2 1/4",
    '8’ 2 ¼',
    '98 1/4"',
    '98 1/4 in',
    '98 1/4 in.',
    '98.25 in',
    '98.25"',
    '393/4 in',
    '  98 1/4  in ',
  ])('%s is 98 1/4 in', (text) => {
    expect(readLength(text)).toEqual({ ok: true, ticks: same, system: 'inches' });
  });

  it.each([
    '2.495 m',
    '249.5 cm',
    '2495 mm',
    '2495mm',
    '2495.0 mm',
    '2.495 metres',
    '2.495 meters',
    '2495 millimetres',
  ])('%s is 2495 mm', (text) =>
    expect(readLength(text)).toEqual({ ok: true, ticks: 2495 * 320, system: 'mm' }),
  );

  it.each([
    ['11 51/64 in', 11 * 8128 + 51 * 127],
    ['1/16 in', 508],
    ['3/8 in', 3048],
    ['3/8"', 3048],
    ['.5 in', 4064],
    ['3 ft', 3 * 97536],
    ["3'", 3 * 97536],
    ['8.5 ft', 8.5 * 97536],
    ['0\' 5/8"', 5080],
    ['0 in', 0],
    ['10 mm', 3200],
    ['0.5 mm', 160],
  ])('%s is %i ticks', (text, ticks) => expect(readLength(text)).toMatchObject({ ok: true, ticks }));

  it.each([
    ['1/3 in', 2709],
    ['0.0001 in', 1],
    ['0.333 mm', 107],
    ['11.8 in', 95910],
  ])('%s goes to the nearest tick once, %i', (text, ticks) =>
    expect(readLength(text)).toMatchObject({ ok: true, ticks }),
  );

  it.each([
    [98, '98'],
    [98.25, '98.25'],
    ['98', '98'],
    ['98 1/4', '98 1/4'],
    ['3/8', '3/8'],
    ['3 ft 2', '3 ft 2'],
    ['8 ft 2 1/4', '8 ft 2 1/4'],
  ])('%s has no unit, or lost one, and is refused', (value, found) => {
    expect(readLength(value)).toEqual({ ok: false, code: 'bareNumber', found });
  });

  it.each([
    '',
    'wide',
    'in',
    '8 hands',
    '2 5/4 in',
    '1/0 in',
    '2,495 m',
    '8 in 2 ft',
    '8 ft 2 ft',
    '1e3 mm',
    '--5 mm',
    '8 1/2 ft 2 in',
    '<b>3 in</b>',
  ])('"%s" is not a length', (text) =>
    expect(readLength(text)).toEqual({ ok: false, code: 'notALength', found: text }),
  );

  it.each(['-3 in', '−3 in', '-1/8"', '- 20 mm'])('%s is negative', (text) => {
    expect(readLength(text)).toEqual({ ok: false, code: 'negative', found: text });
  });

  it.each([
    [null, 'null'],
    [undefined, 'undefined'],
    [true, 'true'],
    [['3 in'], '[…]'],
    [{ in: 3 }, '{…}'],
    [Object.create(null), '{…}'],
  ])('%s is not a text', (value, found) =>
    expect(readLength(value)).toEqual({ ok: false, code: 'notText', found }),
  );

  it('never throws, whatever it is given', () => {
    fc.assert(
      fc.property(fc.anything(), (value) => {
        expect(typeof readLength(value).ok).toBe('boolean');
      }),
      { seed: 1, numRuns: 2000 },
    );
  });

  it('reads back every length that is printed, to the tick', () => {
    const styles = fc.record({ feet: fc.boolean(), finest: fc.constant(1) });
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 16000000 }),
        fc.constantFrom('inches', 'mm'),
        styles,
        (ticks, system, style) => {
          expect(readLength(printLength(ticks, system, style))).toEqual({ ok: true, ticks, system });
        },
      ),
      { seed: 2, numRuns: 2000 },
    );
  });
});

describe('reading a pair of lengths', () => {
  it.each([
    ['11 13/16 in x 23 7/8 in', 96012, 194056],
    ['11 13/16" × 23 7/8"', 96012, 194056],
    ['12 by 24 in', 97536, 195072],
    ['600x300mm', 192000, 96000],
    ['1 ft x 2 ft', 97536, 195072],
  ])('%s', (text, first, second) => expect(readPair(text)).toMatchObject({ ok: true, first, second }));

  it.each([
    ['12 in', 'notAPair'],
    ['1 in x 2 in x 3 in', 'notAPair'],
    ['12 x 24', 'bareNumber'],
    ['12 in x 24', 'bareNumber'],
    ['12 in x wide', 'notALength'],
    [12, 'notText'],
  ])('%s is refused: %s', (value, code) =>
    expect(readPair(value)).toEqual({ ok: false, code, found: String(value) }),
  );
});
