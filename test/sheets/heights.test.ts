import { describe, expect, test } from 'vitest';
import { demos } from './demos.ts';

interface Row {
  readonly name: string;
  readonly after: string;
  readonly measured: string;
  readonly text: string;
  readonly state: string;
}

const rows = demos.flatMap(({ packet, sheets }) => {
  const page = sheets.find(({ template }) => template === 'heights')!;
  const { results } = page.data as { results: readonly Row[] };
  return results.map((row, i) => ({ ...row, kind: packet.heights.results[i]!.kind }));
});

/** Sixteenths or whole mm of a printed height, by hand: `3/4 in` is 12, `18 mm` is 18. */
const steps = (text: string) => {
  const [, whole = '0', over = '0', under = '1', unit] = /^(?:(\d+) )?(?:(\d+)\/(\d+) )?(in|mm)$/.exec(text)!;
  return (Number(whole) + Number(over) / Number(under)) * (unit === 'in' ? 16 : 1);
};

describe('the undercut block', () => {
  const undercut = demos.flatMap(({ packet, sheets }) => {
    const { data } = sheets.find(({ template }) => template === 'heights')!;
    const told = data as { undercut: string; undercutHow: string; stack: string };
    return told.undercut === '' || packet.base.kept.length > 0 ? [] : [told];
  });

  test('is the new layers and the play that is told beside it, as printed', () => {
    expect(undercut.length).toBeGreaterThan(2);
    for (const { undercut: block, undercutHow, stack } of undercut) {
      const play = /\d\S* (?:in|mm)/.exec(undercutHow)![0];
      expect(['1/16 in', '2 mm']).toContain(play);
      expect(steps(block)).toBe(steps(stack) + steps(play));
    }
  });
});

describe('a height after the tile', () => {
  test('of an opening is its clear height, said so and without a sign, with what is to spare', () => {
    const openings = rows.filter(({ kind }) => kind === 'appliance');
    expect(openings.map(({ after, measured }) => [after, measured])).toEqual([
      ['33 15/16 in', 'clear opening'],
    ]);
    expect(openings[0]!.text).toContain('1/16 in to spare. Tight: measure again');
    expect(openings[0]!.state).toBe('TIGHT');
  });

  test('of all else has its sign', () => {
    const others = rows.filter(({ kind }) => kind !== 'appliance');
    expect(others.length).toBeGreaterThan(5);
    for (const { after, measured } of others)
      expect(`${after}${measured}`).toMatch(/^(?:[+−]\S.* (?:in|mm)|0 (?:in|mm))$/);
  });
});
