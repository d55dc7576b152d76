import { describe, expect, test } from 'vitest';
import { figuresApart } from '../../src/sheets/figuresApart.ts';
import { demos } from './demos.ts';

const dataOf = (slug: string, template: string) =>
  demos.find((demo) => demo.slug === slug)!.sheets.find((sheet) => sheet.template === template)!
    .data as Record<string, unknown>;

describe('sheets that would spill a few lines on a second page', () => {
  test('eight cards that are low enough stand on one page, six or fewer as high as they are', () => {
    expect((dataOf('linden-entry', 'hard-cuts').cards as unknown[]).length).toBe(8);
    expect(dataOf('linden-entry', 'hard-cuts').low).toBe(true);
    expect(dataOf('rowan-bath', 'hard-cuts').low).toBe(false);
    expect(dataOf('quarry-kitchen', 'hard-cuts').low).toBe(false);
  });

  test('figures of the set-out go to a page of their own where the drawing leaves them no room', () => {
    expect(dataOf('rowan-bath', 'set-out').apart).toBe(true);
    expect(dataOf('fernlea-boot-room', 'set-out').apart).toBe(false);
  });

  test('figures of more than a page begin under the drawing', () => {
    const figures = dataOf('rowan-bath', 'set-out') as unknown as Parameters<typeof figuresApart>[0];
    const many = { ...figures, lines: Array.from({ length: 12 }, () => figures.lines[0]!) };
    expect(figuresApart(many, { widthMm: 180, heightMm: 60 }, 'letter', 'portrait')).toBe('on');
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
