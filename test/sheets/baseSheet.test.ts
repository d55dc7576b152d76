import { describe, expect, test } from 'vitest';
import { demos } from './demos.ts';

interface Base {
  readonly asked: string;
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
});
