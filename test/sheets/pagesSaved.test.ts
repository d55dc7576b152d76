import { describe, expect, test } from 'vitest';
import { figuresApart } from '../../src/sheets/figuresApart.ts';
import { areLow } from '../../src/sheets/hardCuts.ts';
import { demos } from './demos.ts';

const dataOf = (slug: string, template: string) =>
  demos.find((demo) => demo.slug === slug)!.sheets.find((sheet) => sheet.template === template)!
    .data as Record<string, unknown>;

describe('sheets that would spill a few lines on a second page', () => {
  test('eight cards that are low enough stand on one page, six or fewer as high as they are', () => {
    const cards = (count: number, heightMm: number) =>
      Array.from({ length: count }, () => ({ size: { widthMm: 60, heightMm }, spans: [], pieces: ['K1-1'] }));
    // A letter page holds the rule and four rows of 55.6 mm.
    expect(areLow(cards(8, 54), 237.4)).toBe(true);
    expect(areLow(cards(8, 58), 237.4)).toBe(false);
    expect(areLow(cards(6, 54), 237.4)).toBe(false);
    expect(dataOf('rowan-bath', 'hard-cuts').low).toBe(false);
    expect(dataOf('quarry-kitchen', 'hard-cuts').low).toBe(false);
  });

  test('but not where their steps would be drawn too small to be told', () => {
    const { cards, low } = dataOf('linden-entry', 'hard-cuts') as { cards: unknown[]; low: boolean };
    expect(cards.length).toBe(10);
    expect(low).toBe(false);
  });

  test('figures of the set-out go to a page of their own where the drawing leaves them no room', () => {
    expect(dataOf('rowan-bath', 'set-out').apart).toBe(true);
    expect(dataOf('fernlea-boot-room', 'set-out').apart).toBe(false);
  });

  test('figures of more than a page begin under the drawing', () => {
    const figures = dataOf('rowan-bath', 'set-out') as unknown as Parameters<typeof figuresApart>[0];
    const many = { ...figures, lines: Array.from({ length: 12 }, () => figures.lines[0]!) };
    expect(figuresApart(many, { widthMm: 180, heightMm: 60, belowMm: 22 }, 'letter', 'portrait')).toBe('on');
  });

  test('then the last lines stay with what follows them, and no line is lost', () => {
    const kitchen = dataOf('quarry-kitchen', 'set-out') as Record<'lines' | 'last', { name: string }[]>;
    expect(kitchen.last).toHaveLength(2);
    expect([...kitchen.lines, ...kitchen.last].map(({ name }) => Number(name))).toEqual([
      1, 2, 3, 4, 5, 6, 7,
    ]);
    expect(dataOf('rowan-bath', 'set-out').last).toEqual([]);
  });

  test('two cuts of a start have their unit once', () => {
    const [{ rows }] = dataOf('rowan-bath', 'alternatives').surfaces as [{ rows: { along: string }[] }];
    for (const { along } of rows) expect(along.match(/ in/g)).toHaveLength(1);
  });
});
