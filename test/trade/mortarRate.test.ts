import { describe, expect, test } from 'vitest';
import { inches, millimetres, mortarRate, notchMass, soldIn } from '../../src/trade/index.ts';

const notch = { kind: 'square', width: inches(1 / 4), depth: inches(3 / 8), space: inches(1 / 4) } as const;

describe('the rate of a mortar: the larger of bag and notch (arithmetic)', () => {
  test('a bag of 20 kg that covers 2 to 3 m² is 10 kg/m², more than the notch leaves', () => {
    const rate = mortarRate({ notch, bagKg: 20, coversM2: [2, 3], backButter: false });
    expect(rate).toMatchObject({ rules: 'bag', kgPerM2: 10, byNotch: notchMass(notch) });
  });

  test('back-buttered, it covers 80 % of that: a quarter more', () => {
    expect(mortarRate({ notch, bagKg: 20, coversM2: [2, 3], backButter: true }).kgPerM2).toBe(12.5);
  });

  // By hand: 1/4 · 3/8 / (1/2) in at sin 45° is 0.1326 in, 3.367 mm; at 1.6 kg/L 5.388 kg/m² (from memory), on the floor alone.
  test('back-buttered, the notch too leaves a quarter more: 6.73 kg/m² where 5.39 lie on the floor', () => {
    const rate = mortarRate({ notch, bagKg: 20, coversM2: [5, 6], backButter: true });
    expect(rate.rules).toBe('notch');
    expect(rate.kgPerM2).toBeCloseTo(5.388 / 0.8, 3);
  });

  test('a bag that covers 5 m² is less than the notch leaves: the notch rules', () => {
    const rate = mortarRate({ notch, bagKg: 20, coversM2: [5, 6], backButter: false });
    expect(rate).toMatchObject({ rules: 'notch', byBag: 4, kgPerM2: notchMass(notch) });
  });
});

describe('a notch is told in the units in which it is sold', () => {
  test.each([6, 8, 10, 12, 5])('%d mm in an inch job is millimetres', (size) => {
    expect(soldIn(millimetres(size), 'inches')).toBe('mm');
  });

  test.each([3 / 16, 1 / 4, 3 / 8, 1 / 2, 5 / 32])('%f in in a metric job is inches', (size) => {
    expect(soldIn(inches(size), 'mm')).toBe('inches');
  });
});
