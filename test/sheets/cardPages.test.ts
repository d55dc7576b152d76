import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cardPages } from '../../src/sheets/cardPages.ts';

interface Sized {
  readonly number: number;
  readonly spans: readonly ('wide' | 'tall')[];
}

/** Whether cards can lie on a grid of two columns and three rows, in any order: tried out. */
function canLie(cards: readonly Sized[], taken = Array.from({ length: 6 }, () => false)): boolean {
  const [card, ...rest] = cards;
  if (!card) return true;
  const [wide, tall] = [card.spans.includes('wide') ? 2 : 1, card.spans.includes('tall') ? 2 : 1];
  for (let row = 0; row + tall <= 3; row++)
    for (let column = 0; column + wide <= 2; column++) {
      const own = [...taken.keys()].filter((i) => {
        const [y, x] = [Math.floor(i / 2), i % 2];
        return y >= row && y < row + tall && x >= column && x < column + wide;
      });
      if (own.some((i) => taken[i])) continue;
      if (
        canLie(
          rest,
          taken.map((was, i) => was || own.includes(i)),
        )
      )
        return true;
    }
  return false;
}

const spans = fc.constantFrom<Sized['spans']>([], [], [], ['wide'], ['tall'], ['wide', 'tall']);

describe('cards page by page', () => {
  test('are all there once, and each page holds its own', () => {
    fc.assert(
      fc.property(fc.array(spans, { maxLength: 20 }), (all) => {
        const cards = all.map((one, i) => ({ number: i, spans: one }));
        const pages = cardPages(cards);
        expect(
          pages
            .flat()
            .map(({ number }) => number)
            .sort((a, b) => a - b),
        ).toEqual([...cards.keys()]);
        for (const page of pages) expect(canLie(page)).toBe(true);
      }),
      { seed: 20270812, numRuns: 300 },
    );
  });

  test('are six where each takes one place', () => {
    const cards = Array.from({ length: 13 }, (_, number) => ({ number, spans: [] }));
    expect(cardPages(cards).map(({ length }) => length)).toEqual([6, 6, 1]);
  });

  test('go on in number order where nothing is larger, and a later small one fills a place left free', () => {
    const cards = [{ number: 1, spans: [] }, { number: 2, spans: ['wide'] }, { number: 3, spans: [] }] as const; // biome-ignore format: cards on a line
    expect(cardPages(cards)).toEqual([[...cards]]);
  });

  test('stand each under the rule that joint and gap are off, with the unit', () => {
    const template = readFileSync(
      join(import.meta.dirname, '../../layouts/_includes/sheets/hard-cuts.njk'),
      'utf8',
    );
    const page = /for page in data\.pages([\s\S]*?)<div class="cards/.exec(template)![1]!;
    expect(page).toContain('t(rule, {turned: page.turned})');
    expect(page).toContain("'sheet.saw-list.unit.'");
  });
});
