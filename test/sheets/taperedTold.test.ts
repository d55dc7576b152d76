import { describe, expect, test } from 'vitest';
import { printLength } from '../../src/measure/index.ts';
import { demos, demoTexts, sheetsOf } from './demos.ts';

const textsOf = (data: unknown): string[] => {
  if (typeof data === 'string') return [data];
  return data !== null && typeof data === 'object' ? Object.values(data).flatMap(textsOf) : [];
};

describe.each(demos)('the smallest cut in sight of $slug', ({ packet, sheets }) => {
  const [surface] = packet.surfaces;
  const { chosen } = surface!.start;
  const shown = textsOf(sheets.find(({ template }) => template === 'alternatives')!.data);

  test('is told as the saw list tells the piece: both ends of it where it is tapered', () => {
    const { smallest, smallestEnd } = chosen;
    if (smallestEnd === undefined) return;
    const cut = surface!.cuts.find(({ sizes }) =>
      sizes.some(({ exact }) => Math.abs(exact - smallest) <= 2),
    )!;
    const own = cut.sizes.filter(({ exact }) =>
      [smallest, smallestEnd].some((one) => Math.abs(exact - one) <= 2),
    );
    const numbers = [
      ...new Set(own.map(({ saw }) => printLength(saw, packet.spec.print).replace(/ (in|mm)$/, ''))),
    ];
    expect(numbers.length).toBeGreaterThan(0);
    expect(shown.some((one) => one.includes('%') && numbers.every((size) => one.includes(size)))).toBe(true);
  });
});

describe('what a layout finds fault with', () => {
  // A wall that leans cuts hexagons, so that the most a piece measures is not where the saw list measures it.
  const text = demoTexts['sedge-washroom']!.replace(/saw step: 1\/16 in/, 'saw step: 1/32 in');
  const { packet, sheets } = sheetsOf('sedge-washroom', text, ['layout-plan']);
  const [surface] = packet.surfaces;
  const lines = textsOf(sheets.map(({ data }) => data));
  const straight = surface!.faults.filter(({ code, pieces }) => {
    const own = surface!.cuts.filter((cut) => cut.pieces.some((id) => pieces.includes(id)));
    return code === 'underHalf' && own.every(({ kind }) => ['rip', 'corner', 'taper'].includes(kind));
  });

  test('is sized as the saw list tells those pieces', () => {
    expect(straight.length).toBeGreaterThan(1);
    // The two cuts at D-A are 3.921 in and, at its narrow end, 3.903 in from the factory edge: arithmetic, that is 3 28/32 in and a rest.
    const line = lines.find((one) => one.includes('at D-A: L6-3, L6-5. '))!;
    const own = surface!.cuts.filter((cut) => cut.pieces.some((id) => ['L6-3', 'L6-5'].includes(id)));
    const least = Math.min(...own.flatMap(({ sizes }) => sizes.map(({ saw }) => saw)));
    expect(printLength(least, packet.spec.print)).toBe('3 7/8 in');
    expect(line).toContain('Smallest 3 7/8 to 3 29/32 in,');
  });
});

describe.each(demos)('sizes from one to another on the sheets of $slug', ({ slug, sheets }) => {
  const value = (words: string) => {
    const [, whole = '0', top = '0', under = '1'] = /^(\d+(?:[.,]\d+)?)?(?: ?(\d+)\/(\d+))?$/.exec(
      words.trim(),
    )!;
    return Number(whole.replace(',', '.')) + Number(top) / Number(under);
  };
  const size = String.raw`((?:\d+ \d+\/\d+)|(?:\d+\/\d+)|(?:\d+(?:[.,]\d+)?))`;
  // Two bare figures before one unit; a word for `to` may stand in any language of the sheets.
  const range = new RegExp(`(?<![\\d/×–·] ?)${size} (?:to|a) ${size} (?:in|mm|pulg)\\b`, 'g');

  test('begin with the smaller one', () => {
    const found = sheets.flatMap(({ name, data }) =>
      textsOf(data).flatMap((words) =>
        [...words.matchAll(range)].map(([all, one, other]) => ({ name, all, one, other })),
      ),
    );
    expect(
      found.filter(({ one, other }) => value(one!) > value(other!)).map(({ name, all }) => `${name}: ${all}`),
    ).toEqual([]);
    if (slug === 'rowan-bath') expect(found.length).toBeGreaterThan(5);
  });
});
