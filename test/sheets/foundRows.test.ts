import { describe, expect, test } from 'vitest';
import { isHard } from '../../src/cuts/isHard.ts';
import { rowRanges } from '../../src/sheets/rowRanges.ts';
import { demos, words } from './demos.ts';
import { spokenRows } from './spokenRows.ts';

interface ZoneData {
  readonly expected: { readonly cards: 'yes' | 'no' };
  readonly found: readonly { readonly lines: readonly { rows: string; edge: string; space: string }[] }[];
}

const zones = demos.flatMap(({ slug, packet, sheets }) =>
  packet.surfaces.flatMap((surface) =>
    surface.zones.map((zone) => {
      const sheet = sheets.find(({ name }) => name === `zone-${zone.number}`)!;
      const round = new Set(surface.obstacles.filter(({ circle }) => circle).map(({ name }) => name));
      const hard = surface.cuts.filter(isHard).map(({ number }) => number);
      const { expected } = sheet.data as ZoneData;
      return {
        slug,
        zone,
        round,
        hard,
        expected,
        lines: (sheet.data as ZoneData).found.flatMap(({ lines }) => lines),
      };
    }),
  ),
);

describe('the rows named beside a found space', () => {
  test.each(zones)(
    'are those that end there and no others, counted on from name to name: $slug zone $zone.number',
    ({ zone, lines, round }) => {
      const spoken = lines.flatMap(({ rows }) => spokenRows(rows));
      const ends = zone.found.filter(({ edge = '' }) => !round.has(edge)).map(({ row }) => row);
      const count = (list: readonly string[], row: string) => list.filter((one) => one === row).length;
      expect([...new Set(spoken)].sort()).toEqual([...new Set(ends)].sort());
      expect(spoken.filter((row) => count(spoken, row) > count(ends, row))).toEqual([]);
    },
  );
});

test('rows that step on by two are told so, and not mixed up with a single row before every row', () => {
  const told = zones.flatMap(({ lines }) => lines.map(({ rows }) => rows)).join(', ');
  expect(told).toMatch(/\w+ … \w+ every 2nd/);
  expect(rowRanges(['K1', 'K3', 'K4', 'K5']).map(({ first, last }) => [first, last])).toEqual([
    ['K1', 'K1'],
    ['K3', 'K5'],
  ]);
});

describe('a difference at a hard cut', () => {
  test.each(zones)(
    'is told to change what is cut away the other way: $slug zone $zone.number',
    ({ zone, round, hard, expected }) => {
      const ends = zone.found.filter(({ edge = '' }) => !round.has(edge));
      expect(expected.cards).toBe(
        ends.some(({ cuts }) => cuts.some((cut) => hard.includes(cut))) ? 'yes' : 'no',
      );
    },
  );

  test('is told in every language, and not where no hard cut is named', () => {
    for (const lang of words.languages) {
      const [with_, without] = ['yes', 'no'].map((cards) =>
        words.say(lang)('sheet.zone.expected', { cards }),
      );
      expect(with_!.length).toBeGreaterThan(without!.length + 30);
    }
  });
});
