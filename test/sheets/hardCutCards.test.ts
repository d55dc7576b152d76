import { describe, expect, test } from 'vitest';
import type { Cut } from '../../src/cuts/Cut.ts';
import { isHard } from '../../src/cuts/isHard.ts';
import { wallEdges } from '../../src/drawing/cutFrame.ts';
import { cardTurn, mmPerTick, shortestSawn, textWidth } from '../../src/drawing/index.ts';
import { direction } from '../../src/drawing/Scale.ts';
import { demos, words } from './demos.ts';

interface Card {
  readonly number: number;
  readonly scale: string;
  readonly broken: boolean;
  readonly leastMm: number;
  readonly size: { readonly widthMm: number; readonly heightMm: number };
  readonly spans: readonly string[];
  readonly drawing: string;
  readonly notes: readonly string[];
  readonly asPlan: string;
}

const withCards = demos.flatMap(({ slug, packet, sheets }) => {
  const sheet = sheets.find(({ template }) => template === 'hard-cuts');
  return sheet ? [[slug, packet, sheet, (sheet.data as { cards: readonly Card[] }).cards] as const] : [];
});

/** What a page's rule says in English of cards that are turned so. */
const TURNED = {
  wall: 'wall side down',
  plan: 'up, as on the plan',
  both: 'wall down or as on the plan',
  hatched: 'wall where hatched',
};

describe.each(withCards)('the cards of %s', (_, packet, sheet, cards) => {
  const cuts = packet.surfaces.flatMap((surface) => surface.cuts.filter(isHard));

  /** Whether a side that a wall cuts faces up on the card of a cut. */
  const facesUp = (number: number) =>
    packet.surfaces.some((surface) =>
      surface.cuts
        .filter((cut) => cut.number === number)
        .some((cut) => {
          const [cos, sin] = direction(cardTurn(cut, surface).turn);
          // The outside lies to the right of an edge.
          return wallEdges(cut).some(({ from, to }) => {
            const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
            return -(dx * cos - dy * sin) > 0.31 * Math.hypot(dx, dy);
          });
        }),
    );

  test('are turned as the rule over their page says', () => {
    const { pages } = sheet.data as { pages: readonly { cards: readonly Card[]; turned: string }[] };
    for (const page of pages) {
      const ways = new Set(page.cards.map(({ asPlan }) => (asPlan === '' ? 'wall' : 'plan')));
      const up = page.cards.some(({ number, asPlan }) => asPlan === '' && facesUp(number));
      const way = up ? 'hatched' : ways.size > 1 ? 'both' : [...ways][0]!;
      for (const rule of ['first', 'held'])
        expect(words.say('en')(`sheet.hard-cuts.${rule}`, { turned: page.turned })).toContain(TURNED[way]);
    }
  });

  test('are drawn each at a scale that its page or the card itself tells', () => {
    for (const { scale, size } of cards) {
      if (sheet.scale) expect(scale).toBe(sheet.scale);
      expect(size.widthMm).toBeLessThanOrEqual(180);
    }
  });

  test('take the place of two where the smallest notch would be under 3 mm on one, if that shows it larger', () => {
    for (const { number, scale, spans, leastMm } of cards) {
      const cut = cuts.find((one) => one.number === number)!;
      expect(leastMm).toBe(shortestSawn(cut, mmPerTick(Number(scale.split(':')[1]))));
      if (leastMm >= 3 * 3) expect(spans.length).toBeLessThanOrEqual(2);
    }
  });

  test('offer the template where they have more than four figures', () => {
    const { print } = packet.spec;
    const other = words.say(print.crew[0]!)('sheet.hard-cuts.offTile');
    const offer = words.say(print.crew[0]!)('sheet.hard-cuts.manySizes');
    for (const { number, notes } of cards) {
      const { sizes } = cuts.find((one) => one.number === number)!;
      const many = sizes.filter(({ saw }) => saw > 0).length > 4;
      const told = [other, offer].some((one) => (notes[0] ?? '').includes(one));
      if (many) expect(told, `card ${number}`).toBe(true);
      else expect(notes[0] ?? '').not.toContain(offer);
    }
  });

  test('print no size of 0', () => {
    for (const { drawing } of cards) expect(drawing).not.toMatch(/>0</);
  });
});

test('a step of 5/8 in, 1.3 mm at 1:12, is drawn over 3 mm long', () => {
  const [, , , cards] = withCards.find(([slug]) => slug === 'quarry-kitchen')!;
  expect(cards.map(({ leastMm }) => leastMm > 3)).toEqual(cards.map(() => true));
});

describe('what a card of linden-entry measures from', () => {
  const [, packet, , cards] = withCards.find(([slug]) => slug === 'linden-entry')!;
  const told = cards.filter(({ notes }) => notes.join(' ').includes('before you saw'));
  const kinds = packet.surfaces.flatMap(({ cuts }) => cuts.filter(isHard));
  /** Whether all of the sides that run across the plank are sawn off. */
  const keepsNoEnd = ({ edges, tile }: Cut) => {
    const { length } = packet.spec.tiles.find(({ key }) => key === tile)!;
    const ends = edges.filter(({ from, to, factory }) => factory && from[0] === to[0]);
    return !ends.some(({ from }) => from[0] === 0 || from[0] === length);
  };

  test('stays till the last cut, else all lines are to be marked before the first', () => {
    expect(kinds.filter(keepsNoEnd).length).toBeGreaterThan(1);
    expect(told.map(({ number }) => number).sort()).toEqual(
      kinds.filter(keepsNoEnd).map(({ number }) => number),
    );
  });

  test('that its piece begins in the corner of its tile is no size as long as the tile', () => {
    for (const { drawing } of cards) expect(drawing).not.toContain('>597<');
  });

  test('is told in both languages of the crew', () => {
    for (const { notes } of told) expect(notes[1]).toContain('antes de cortar');
  });
});

describe('the cards of planks', () => {
  const [, , , cards] = withCards.find(([slug]) => slug === 'linden-entry')!;

  test('are broken where that shows them larger: at 1:15 a plank of 597 mm fits its card as it is', () => {
    const broken = cards.filter((one) => one.broken);
    expect(broken.length).toBeGreaterThan(3);
    for (const { scale } of broken) expect(Number(scale.split(':')[1])).toBeLessThan(15);
  });

  test('are broken only of tiles at least three times as long as wide', () => {
    for (const [, { surfaces, spec }, , all] of withCards) {
      const numbers = all.filter(({ broken }) => broken).map(({ number }) => number);
      const tiles = surfaces
        .flatMap((surface) => surface.cuts.filter(({ number }) => numbers.includes(number)))
        .map((cut) => spec.tiles.find(({ key }) => key === cut.tile)!);
      for (const { length, width } of tiles) expect(length).toBeGreaterThanOrEqual(3 * width);
    }
  });
});

/** The column of a card that tells what kind of cut it is, in mm, as the style sheet has it, and its type in points. */
const COLUMN = { mm: 16, points: 9 } as const;

describe.each(['en', 'es', 'pt'])('the column beside a card in %s', (lang) => {
  test.each(['breaks', 'broken', 'asPlan'])('is as wide as each word of what %s tells', (key) => {
    const told = words.say(lang)(`sheet.hard-cuts.${key}`, { count: 1, piece: '' });
    for (const word of told.split(/\s/))
      expect(textWidth(word, COLUMN.points), word).toBeLessThanOrEqual(COLUMN.mm);
  });
});
