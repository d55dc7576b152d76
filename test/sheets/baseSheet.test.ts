import { describe, expect, test } from 'vitest';
import { demos } from './demos.ts';

interface Base {
  readonly asked: string;
  readonly found: readonly { readonly text: string; readonly answers?: readonly string[] }[];
  readonly checks: readonly { readonly what: string; readonly second: string }[];
}

const baseOf = (slug: string) =>
  demos.find((demo) => demo.slug === slug)!.sheets.find(({ template }) => template === 'base-sheet')!
    .data as Base;

describe('the base sheet', () => {
  test('a job in millimetres has the round limits that ANSI A108.01 prints beside its inches', () => {
    expect(baseOf('almond-hall').asked).toContain('6 mm');
    expect(baseOf('almond-hall').asked).toContain('3000 mm');
  });

  test('a job in inches has those of ANSI A108.01 in inches', () => {
    expect(baseOf('rowan-bath').asked).toContain('1/4 in under a straightedge of 10 ft');
  });

  test.each([
    ['rowan-bath', ['Película en la base', 'Humedad']],
    ['almond-hall', ['Film on the base', 'Moisture']],
    ['quarry-kitchen', ['', '']],
  ])('%s speaks the second language of its crew, if there is one', (slug, words) => {
    expect(baseOf(slug).checks.map(({ second }) => second)).toEqual(words);
  });

  test('what moves where no tile joint lies over it has its answers to tick, and is not told to be done already', () => {
    const [row] = baseOf('quarry-kitchen').found;
    expect(row!.answers).toHaveLength(3);
    expect(row!.text).not.toContain('Carry it up');
  });

  test('what has nothing to decide has none', () => {
    const open = baseOf('fernlea-boot-room').found.filter(({ answers }) => answers);
    expect(open).toEqual([]);
  });
});

describe('what moves in the base, on the tally', () => {
  const linesOf = (slug: string) =>
    demos
      .find((demo) => demo.slug === slug)!
      .sheets.filter(({ template }) => template === 'material-tally')
      .flatMap(({ data }) => (data as { materials: readonly { sum: readonly string[] }[] }).materials)
      .flatMap(({ sum }) => sum);

  // The wood meets over the old wall 8 ft from A-B, where the kitchen is 7 ft 6 3/4 in wide, less a gap of 1/4 in at each end.
  test('is not counted while the base sheet asks, but told with what it would add', () => {
    const told = linesOf('quarry-kitchen').filter((line) => line.startsWith('Not counted: 7.5 ft'));
    expect(new Set(told).size).toBe(2);
  });

  test('is not told where nothing moves', () => {
    expect(linesOf('rowan-bath').filter((line) => line.startsWith('Not counted'))).toEqual([]);
  });
});
