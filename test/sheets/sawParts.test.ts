import { describe, expect, test } from 'vitest';
import { sawPage } from '../../src/sheets/sawPage.ts';
import { sawParts } from '../../src/sheets/sawParts.ts';
import { demoTexts, sheetsOf, words } from './demos.ts';

const { packet } = sheetsOf('quarry-kitchen', demoTexts['quarry-kitchen']!, []);
const page = sawPage(packet, 'en', words.say('en'));
const cards = page.surfaces.flatMap((surface) => surface.cards);
const lettersOf = (part: (typeof parts)[number]) =>
  part.surfaces.reduce(
    (sum, { plan, cards: own }) =>
      sum + plan.length + own.reduce((all, { drawing }) => all + drawing.length, 0),
    0,
  );
const room = 110_000;
const parts = sawParts(page, room);

describe('the page beside the saw of a floor with very many cuts', () => {
  test('is one page wherever it can be sent as one', () => {
    const [only, ...more] = sawParts(page);
    expect([only!.file, only!.others, only!.surfaces, more]).toEqual(['saw.html', [], page.surfaces, []]);
  });

  test('is parted by the numbers of the cuts into pages that can be sent, each cut on one of them', () => {
    expect(parts.length).toBeGreaterThan(1);
    expect(parts.map(({ file }) => file).slice(0, 2)).toEqual(['saw.html', 'saw-2.html']);
    expect(parts.filter((part) => lettersOf(part) > room)).toEqual([]);
    expect(parts.flatMap(({ surfaces }) => surfaces.flatMap((one) => one.cards))).toEqual(cards);
  });

  test('each page tells where the other cuts are', () => {
    const told = parts[0]!.others.flatMap(({ floors }) => floors);
    expect(
      told.flatMap(({ from, to }) => cards.filter(({ number }) => number >= from && number <= to)),
    ).toEqual(cards);
    expect(parts.every(({ others }) => others.map(({ file }) => file).join() === parts.map(({ file }) => file).join())).toBe(true); // biome-ignore format: one idea
  });

  test('a piece leads to its card, on whichever page that is', () => {
    for (const { file, surfaces } of parts) {
      for (const [, target] of surfaces[0]!.plan.matchAll(/href="([^"]*)"/g)) {
        const [at, id] = target!.split('#');
        const there = parts.find((part) => part.file === (at || file))!;
        expect(there.surfaces.flatMap((one) => one.cards.map((card) => card.id))).toContain(id);
      }
    }
  });

  test('a floor without a cut has a page too', () => {
    const bare = { ...page, surfaces: page.surfaces.map((surface) => ({ ...surface, cards: [] })) };
    expect(sawParts(bare).map(({ surfaces }) => surfaces.length)).toEqual([page.surfaces.length]);
  });
});
