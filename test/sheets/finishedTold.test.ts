import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { languages } from '../../src/job/languages.ts';
import type { Packet } from '../../src/packet/Packet.ts';
import { makeSheets } from '../../src/sheets/makeSheets.ts';
import { words } from './demos.ts';

const kept = JSON.parse(
  readFileSync(join(import.meta.dirname, '../../jobs/almond-hall/packet.json'), 'utf8'),
) as Packet;
const KINDS = ['calendar', 'door-sign', 'care-sheet', 'heights', 'material-tally'];

/** The kept packet of a floor that is laid, with all its sheets in one language; or the same floor before that. */
function toldIn(lang: (typeof languages)[number], status: Packet['job']['status']) {
  const print = { ...kept.spec.print, crew: [lang], owner: lang };
  const packet = {
    ...kept,
    job: { ...kept.job, status },
    spec: { ...kept.spec, print },
    heights: {
      ...kept.heights,
      results: [
        ...kept.heights.results,
        {
          name: 'dishwasher',
          kind: 'appliance',
          after: 272000,
          pass: true,
          code: 'height.appliance.measure',
          figures: { height: 272000 },
        },
      ],
    },
  } as Packet;
  return makeSheets(packet, words, KINDS);
}

/** What nobody can do any more when the tile lies: order it, book, settle what the sheet of the base asks. */
const YET_TO_COME = {
  en: /before you order|first time to book|until the question|measure first|agree (?:now|who)/i,
  es: /antes de pedir|acuerde (?:ya|qui)|hasta responder|mida (?:antes|la)/i,
  pt: /antes de pedir|combine (?:já|quem)|até responder|meça/i,
} as const;

const textOf = (sheets: ReturnType<typeof toldIn>) => JSON.stringify(sheets.map(({ data }) => data));

describe.each(languages)('a floor that is laid, in %s', (lang) => {
  const [laid, planned] = [toldIn(lang, 'finished'), toldIn(lang, 'planned')];

  test('has no sign on its door', () => {
    expect(laid.map(({ template }) => template)).not.toContain('door-sign');
    expect(planned.map(({ template }) => template)).toContain('door-sign');
  });

  test('asks nobody to order, book or settle what is done', () => {
    expect(textOf(planned)).toMatch(YET_TO_COME[lang]);
    expect(YET_TO_COME[lang].exec(textOf(laid))?.[0]).toBeUndefined();
  });

  test('keeps its figures: when the sealer has cured, every height, what was not counted', () => {
    const dataOf = <T>(sheets: typeof laid, name: string) =>
      sheets.find(({ template }) => template === name)!.data as T;
    const care = dataOf<{ closed: string }>(laid, 'care-sheet');
    const { wet } = dataOf<{ wet: string }>(laid, 'care-sheet');
    expect(wet).not.toBe('');
    const numbers = (text: string) => text.match(/\d+/g) ?? [];
    expect(numbers(care.closed)).toEqual(numbers(dataOf<typeof care>(planned, 'care-sheet').closed));
    const heights = (sheets: typeof laid) =>
      dataOf<{ results: readonly { name: string; after: string }[] }>(sheets, 'heights').results.map(
        ({ name, after }) => [name, after],
      );
    expect(heights(laid)).toEqual(heights(planned));
    const sums = (sheets: typeof laid) =>
      dataOf<{ materials: readonly { sum: readonly string[] }[] }>(sheets, 'material-tally').materials.map(
        ({ sum }) => sum.map(numbers),
      );
    expect(sums(laid)).toEqual(sums(planned));
  });
});
