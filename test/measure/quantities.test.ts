import { describe, expect, it } from 'vitest';
import {
  areaM2Of,
  litresOf,
  printArea,
  printMass,
  printTemperature,
  printVolume,
  readArea,
  readAreaRange,
  readMass,
  readTemperature,
  readTime,
  readVolume,
} from '../../src/measure/index.ts';

describe('units other than length', () => {
  // NIST Handbook 44, Appendix C, the values that it gives as exact: 1 square foot = 0.092 903 04 square
  // meter, 1 square yard = 0.836 127 36 square meter, 1 square inch = 6.4516 square centimeters,
  // 1 avoirdupois pound = 453.592 37 grams, 1 gallon = 231 cubic inches = 3.785 411 784 liters,
  // 1 cubic foot = 28.316 846 592 liters.
  it.each([
    [readArea('1 sq ft'), 'areaM2', 0.09290304],
    [readArea('1 sq yd'), 'areaM2', 0.83612736],
    [readArea('1 sq in'), 'areaM2', 0.00064516],
    [readMass('1 lb'), 'massKg', 0.45359237],
    [readVolume('1 gal'), 'litres', 3.785411784],
    [readVolume('1 cu ft'), 'litres', 28.316846592],
  ] as const)('%o', (reading, key, value) => {
    expect(reading.ok && (reading as unknown as Record<string, number>)[key]).toBeCloseTo(value, 12);
  });

  it('agree with ticks: a square foot, a gallon of 231 cubic inches', () => {
    expect(areaM2Of(97536 ** 2)).toBeCloseTo(0.09290304, 12);
    expect(litresOf(231 * 8128 ** 3)).toBeCloseTo(3.785411784, 10);
  });

  it.each(['200 sq ft', '200 sq. ft.', '200 ft2', '200 ft²', '200 square feet', '200sqft'])(
    '%s is an area',
    (text) => {
      expect(readArea(text)).toMatchObject({ ok: true, areaM2: 200 * 0.09290304 });
    },
  );

  it('read a coverage as a range, the smaller first', () => {
    expect(readAreaRange('60-80 sq ft')).toEqual({
      ok: true,
      lowM2: 60 * 0.09290304,
      highM2: 80 * 0.09290304,
    });
    expect(readAreaRange('8 to 6 m2')).toEqual({ ok: true, lowM2: 6, highM2: 8 });
    expect(readAreaRange('60-80')).toEqual({ ok: false, code: 'notAQuantity', found: '60-80' });
  });

  it.each([
    ['24 h', 24],
    ['1 hour', 1],
    ['3 days', 72],
    ['90 min', 1.5],
    ['2 weeks', 336],
  ])('%s is %d hours', (text, hours) => expect(readTime(text)).toEqual({ ok: true, hours }));

  // The fixed points of the two scales: water freezes at 32 °F and 0 °C, boils at 212 °F and 100 °C.
  it.each([
    ['32 F', 0],
    ['212 °F', 100],
    ['-40 F', -40],
    ['-40 °C', -40],
    ['21 C', 21],
  ])('%s is %d °C', (text, tempC) => expect(readTemperature(text)).toEqual({ ok: true, tempC }));

  it.each([
    [readArea(200), 'bareNumber'],
    [readArea('200'), 'bareNumber'],
    [readArea('200 lb'), 'notAQuantity'],
    [readMass('heavy'), 'notAQuantity'],
    [readTime(null), 'notText'],
    [readTemperature('70'), 'bareNumber'],
    [readTemperature('-70'), 'bareNumber'],
  ])('%o is refused: %s', (reading, code) => expect(reading).toMatchObject({ ok: false, code }));

  it('are printed in either system', () => {
    expect([printArea(18.5, 'inches'), printArea(18.5, 'mm')]).toEqual(['199.1 sq ft', '18.50 m²']);
    expect([printMass(20, 'inches'), printMass(20, 'mm')]).toEqual(['44.1 lb', '20 kg']);
    expect([printVolume(1, 'inches'), printVolume(1, 'mm')]).toEqual(['0.26 gal', '1 L']);
    expect([printTemperature(21, 'inches'), printTemperature(-18, 'inches')]).toEqual(['70 °F', '0 °F']);
  });
});
