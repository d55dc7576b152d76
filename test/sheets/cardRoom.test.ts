import { describe, expect, test } from 'vitest';
import { cardSpace } from '../../src/drawing/index.ts';
import { headMm, roomOf } from '../../src/sheets/cardRoom.ts';
import { demoTexts, sheetsOf, words } from './demos.ts';

const names = (count: number) => Array.from({ length: count }, (_, i) => `K${i + 1}-12`);

describe('the room of a card', () => {
  test('is the whole of it over a row of pieces', () => {
    expect(roomOf(['K1-5'], []).single).toEqual(cardSpace);
    expect(roomOf(names(3), []).single).toEqual(cardSpace);
  });

  test('is less by each further row of them, by as much as a box is high at least', () => {
    const heights = [3, 6, 9].map((count) => roomOf(names(count), []).single.heightMm);
    expect(heights[0]! - heights[1]!).toBeGreaterThan(0);
    expect(heights[1]! - heights[2]!).toBeGreaterThanOrEqual(7);
  });

  const notes = ['The middle lies off the tile: use its template.', 'Its own words once more in another.'];

  test('is the whole of it with words beside a piece', () => {
    expect(roomOf(['K1-5'], notes).single).toEqual(cardSpace);
  });

  test('is less where words go on to a second line under a row of pieces, and not on a wide card that has room beside', () => {
    const { single, doubles } = roomOf(names(3), notes);
    expect(single.heightMm).toBeLessThan(cardSpace.heightMm);
    expect(doubles.find(({ widthMm }) => widthMm > cardSpace.widthMm)!.heightMm).toBe(cardSpace.heightMm);
  });
});

describe('the words of a card', () => {
  test('leave less room beside its drawing the more of them stand under it', () => {
    const note = 'From the offcut of cut 26, sawn first.';
    const heads = [1, 3, 6].map((count) => roomOf(['M1-11'], Array(count).fill(note)).heads!);
    expect(heads.map(({ single }) => single)).toEqual(
      [...heads.map(({ single }) => single)].sort((a, b) => b - a),
    );
    expect(heads[2]!.single).toBeLessThan(heads[0]!.single);
    expect(heads[2]!.doubles[0]).toBeGreaterThan(heads[2]!.single);
  });

  // Reading: the same entry for a crew of which each language comes first once; 71.3 mm is a card inside its edge.
  test.each([['[pt, en]'], ['[en, pt]'], ['[es, pt]']])('all stand on it for a crew of %s', (crew) => {
    const text = demoTexts['linden-entry']!.replace(/crew: \[[^\]]*\]/, `crew: ${crew}`);
    const { sheets, packet } = sheetsOf('linden-entry', text, ['hard-cuts']);
    const [sheet] = sheets as readonly { readonly data: unknown }[];
    const { cards } = sheet!.data as {
      readonly cards: readonly {
        readonly number: number;
        readonly kind: string;
        readonly hand: string;
        readonly asPlan: string;
        readonly broken: boolean;
        readonly scale: string;
        readonly pieces: readonly string[];
        readonly notes: readonly string[];
        readonly spans: readonly string[];
      }[];
    };
    const say = words.say(packet.spec.print.crew[0]!);
    const over = cards.filter(({ kind, hand, asPlan, broken, scale, pieces, notes, spans }) => {
      const head = headMm([
        say('site.scale', { scale }),
        `${kind} ${hand}${asPlan ? ` · ${asPlan}` : ''}`,
        broken ? say('sheet.hard-cuts.broken') : '',
      ]);
      const { single, doubles } = roomOf(pieces, notes).heads!;
      return head > (spans.includes('tall') ? doubles[1]! : spans.includes('wide') ? doubles[0]! : single);
    });
    expect(over.map(({ number }) => number)).toEqual([]);
  });
});
