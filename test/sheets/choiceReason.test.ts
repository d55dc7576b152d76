import { describe, expect, test } from 'vitest';
import { type ChoiceFigures, choiceReason } from '../../src/sheets/choiceReason.ts';
import { choiceSheet } from '../../src/sheets/choiceSheet.ts';
import { demos, demoTexts, sheetsOf, words } from './demos.ts';

interface Told {
  readonly advised: boolean;
  readonly reason: string;
  readonly answerBy: string;
  readonly rows: readonly { readonly values: readonly string[] }[];
}

const toldIn = (sheets: ReturnType<typeof sheetsOf>['sheets']) =>
  sheets.filter(({ template }) => template === choiceSheet.name).map(({ data }) => data as Told);

const offered = demos.flatMap(({ slug, packet, sheets }) =>
  toldIn(sheets).map((told) => ({ slug, packet, told })),
);

describe('the reason for the advice', () => {
  test.each(offered)(
    'of $slug is told where there is advice, in figures that stand beside it',
    ({ told }) => {
      expect(told.reason !== '').toBe(told.advised);
      const pairs = [...told.reason.matchAll(/\(([^()]+), not ([^()]+)\)/g)].map(([, one, two]) => [
        one,
        two,
      ]);
      expect(pairs.length).toBeGreaterThan(0);
      const [ours, theirs] = [0, 1].map((k) => told.rows.map(({ values }) => values[k]!).join(' | '));
      const against = told.reason.indexOf('Layout 2');
      for (const [one, two] of pairs) {
        const turned = against >= 0 && told.reason.indexOf(`(${one}, not ${two})`) > against;
        expect(turned ? theirs : ours).toMatch(new RegExp(`\\b${one}\\b`));
        expect(turned ? ours : theirs).toMatch(new RegExp(`\\b${two}\\b`));
      }
    },
  );

  // By hand: the first is better in the first three, the other one in the last, and they are alike in pieces.
  const own: ChoiceFigures = {
    share: 0.66,
    narrowest: '5 in',
    small: 0,
    cut: 31,
    pieces: 68,
    buy: 79,
    boxes: [0],
    border: false,
  };
  const other: ChoiceFigures = {
    share: 0.26,
    narrowest: '2 in',
    small: 26,
    cut: 40,
    pieces: 68,
    buy: 78,
    boxes: [0],
    border: false,
  };

  test('names what is better about each of the two, and nothing in which they are alike', () => {
    for (const lang of words.languages) {
      const said = choiceReason({ say: words.say(lang), lang }, own, other);
      const figures = [...said.matchAll(/\d+/g)].map(([figure]) => Number(figure));
      expect(figures.filter((figure) => figure > 2 || figure === 0)).toEqual([5, 0, 26, 31, 40, 78, 79]);
    }
  });

  test.each([
    ['the boxes are not known', [0], [0], true],
    ['there are fewer boxes', [8], [7], true],
    ['there are as many boxes', [7], [7], false],
    ['there are as many boxes of each of two tiles', [7, 2], [7, 2], false],
    ['there are as many boxes of one tile and fewer of another', [7, 3], [7, 2], true],
    ['there are as many boxes of one tile, and those of another are not known', [7, 0], [7, 0], true],
  ])('where %s, fewer tiles to buy are told: %j and %j', (_, ours, theirs, told) => {
    for (const lang of words.languages) {
      const [one, two] = [
        { ...own, boxes: ours },
        { ...other, boxes: theirs },
      ];
      const said = choiceReason({ say: words.say(lang), lang }, one, two);
      expect(/\b78\b/.test(said)).toBe(told);
    }
  });

  test('of a demo job names tiles to buy only where it takes boxes in other numbers', () => {
    const same = offered.filter(({ packet }) => {
      const { choice } = packet.surfaces[0]!;
      return Object.entries(packet.tiles).every(
        ([key, { boxes }]) => boxes > 0 && boxes === choice!.buy[key]!.boxes,
      );
    });
    expect(same.length).toBeGreaterThan(0);
    for (const { told } of same) expect(told.reason).not.toContain('bought');
  });

  test('is none where the first is better in nothing', () => {
    expect(choiceReason({ say: words.say('en'), lang: 'en' }, own, own)).toBe('');
  });
});

describe('the answer', () => {
  test.each(offered)('of $slug is wanted before the day of the first tile', ({ packet, told }) => {
    const days = packet.calendar.filter(({ code }) => code === 'set').map(({ from }) => from.slice(8, 10));
    expect(told.answerBy).toMatch(new RegExp(`before \\w+, \\w+ ${Number(days[0])}, `));
  });

  test('is wanted before tile is bought, whether or not a day is known', () => {
    const [slug, text] = Object.entries(demoTexts).find(([slug]) => slug === 'rowan-bath')!;
    const undated = sheetsOf(slug, text.replace(/from: \S+ /, ''), [choiceSheet.name]);
    expect(toldIn(undated.sheets)[0]!.answerBy).toBe('Please answer before the tile is bought.');
    for (const { told } of offered)
      expect(told.answerBy).toMatch(/^Please answer before the tile is bought, /);
  });
});
