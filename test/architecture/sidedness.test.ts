import { describe, expect, test } from 'vitest';
import { sidesAsked } from './support/sidedness.ts';
import { readSource, readSources } from './support/sources.ts';

describe('which side of a line a point lies on', () => {
  test('is asked of geometry/side.ts and decided nowhere else', () => {
    const elsewhere = readSources().filter(({ path }) => path !== 'geometry/side.ts');
    expect(elsewhere.flatMap(sidesAsked)).toEqual([]);
  });

  test.each([
    'const left = a * b - c * d > 0;',
    'const on = 0 === (a - e) * b - c * d;',
    'const turn = a * b - c * d;\nconst left = turn > 0;',
    'const s = Math.sign(a * b - c * d);',
  ])('the check finds %s', (text) => {
    expect(sidesAsked(readSource('cuts/a.ts', text))).toHaveLength(1);
  });

  test('and leaves areas, sums and comparisons of lengths alone', () => {
    const text = 'const area = a * b - c * d;\nconst long = a * b + c * d > 0;\nconst more = a - b > 0;';
    expect(sidesAsked(readSource('cuts/a.ts', text))).toEqual([]);
  });
});
