import { expect, test } from 'vitest';
import { demos } from './demos.ts';

interface Called {
  readonly number: number;
  readonly hand: string;
  readonly asPlan: string;
}

/** What the hard cuts of a demo are called on a sheet, by number. */
function calledOn(demo: (typeof demos)[number], template: string, key: 'cards' | 'pages') {
  const all = demo.sheets
    .filter((sheet) => sheet.template === template)
    .flatMap(({ data }) => (data as Record<typeof key, readonly Called[]>)[key]);
  return new Map(all.map(({ number, hand, asPlan }) => [number, `${hand} ${asPlan}`]));
}

test.each(demos)('$slug: card and template of a cut call it by one hand', (demo) => {
  const [cards, pages] = [calledOn(demo, 'hard-cuts', 'cards'), calledOn(demo, 'templates', 'pages')];
  expect(pages.size).toBeGreaterThan(0);
  for (const [number, called] of pages) expect(called, `cut ${number}`).toBe(cards.get(number));
});
