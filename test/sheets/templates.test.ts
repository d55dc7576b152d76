import { describe, expect, test } from 'vitest';
import { demos } from './demos.ts';

interface Page {
  readonly number: number;
  readonly count: number;
  readonly page: number;
  readonly of: number;
  readonly drawing: string;
}

describe.each(demos)('the templates of $slug', ({ packet, sheets }) => {
  const [sheet, ...more] = sheets.filter(({ template }) => template === 'templates');
  const pages = (sheet?.data as { pages: readonly Page[] } | undefined)?.pages ?? [];
  const cuts = packet.surfaces.flatMap((surface) => surface.cuts);

  test('are one document of their own, at full size', () => {
    expect(more).toEqual([]);
    expect([sheet?.bundles, sheet?.scale, sheet?.bars]).toEqual([['templates'], '1:1', true]);
  });

  test('are made once for each hard cut and each point of several saw lines, and for no plain cut', () => {
    const plain = new Set(['rip', 'corner', 'taper']);
    const made = [...new Set(pages.map(({ number }) => number))];
    expect(made).toEqual(expect.arrayContaining(cuts.filter(({ hard }) => hard).map(({ number }) => number)));
    expect(cuts.filter(({ number, kind }) => made.includes(number) && plain.has(kind))).toEqual([]);
  });

  test('number their sheets without a hole', () => {
    for (const [i, { page, of }] of pages.entries()) {
      expect(page).toBe(i > 0 && pages[i - 1]!.page < pages[i - 1]!.of ? pages[i - 1]!.page + 1 : 1);
      expect(page).toBeLessThanOrEqual(of);
    }
  });

  test('are labelled', () => {
    expect(pages.filter(({ drawing }) => !/role="img" aria-label="[^"]+"/.test(drawing))).toEqual([]);
  });
});
