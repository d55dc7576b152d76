import { describe, expect, test } from 'vitest';
import { demos } from './demos.ts';

interface Row {
  readonly name: string;
  readonly after: string;
  readonly measured: string;
  readonly text: string;
}

const rows = demos.flatMap(({ packet, sheets }) => {
  const page = sheets.find(({ template }) => template === 'heights')!;
  const { results } = page.data as { results: readonly Row[] };
  return results.map((row, i) => ({ ...row, kind: packet.heights.results[i]!.kind }));
});

describe('a height after the tile', () => {
  test('of an opening is its clear height, said so and without a sign, with what is to spare', () => {
    const openings = rows.filter(({ kind }) => kind === 'appliance');
    expect(openings.map(({ after, measured }) => [after, measured])).toEqual([
      ['33 15/16 in', 'clear opening'],
    ]);
    expect(openings[0]!.text).toContain('1/16 in to spare');
  });

  test('of all else has its sign', () => {
    const others = rows.filter(({ kind }) => kind !== 'appliance');
    expect(others.length).toBeGreaterThan(5);
    for (const { after, measured } of others)
      expect(`${after}${measured}`).toMatch(/^(?:[+−]\S.* (?:in|mm)|0 (?:in|mm))$/);
  });
});
