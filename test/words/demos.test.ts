import { describe, expect, test } from 'vitest';
import type { Packet } from '../../src/packet/Packet.ts';
import { makeSheets } from '../../src/sheets/makeSheets.ts';
import { sawPage } from '../../src/sheets/sawPage.ts';
import { noteLines } from '../../src/site/noteLines.ts';
import { demos, words } from '../sheets/demos.ts';
import { languages } from './catalogues.ts';

/** A packet for a crew and an owner of one language. */
const spoken = (packet: Packet, lang: string): Packet => ({
  ...packet,
  spec: { ...packet.spec, print: { ...packet.spec.print, crew: [lang], owner: lang } },
});

/** Every text of a sheet's data: its words, and those that its drawings and tables hold. */
function textsOf(data: unknown): string[] {
  if (typeof data === 'string')
    return data.startsWith('<svg') ? [...data.matchAll(/>([^<>]+)</g)].map(([, text]) => text!) : [data];
  return typeof data === 'object' && data !== null ? Object.values(data).flatMap(textsOf) : [];
}

/** Decimals among them with the other language's mark; sections of standards and days are no decimals. */
function strangeDecimals(texts: readonly string[], strange: RegExp): string[] {
  return texts
    .map((text) => text.replace(/\b[A-Z]+ ?[A-Z]?\d+(?:\.\d+)+(?: §[\d.]+)?|§[\d.]+/g, ''))
    .filter((text) => strange.test(text));
}

const comma = /\d\.\d/;
const point = /\d,\d/;
/** Spanish has the decimal point where letter paper is used, and else the comma. Source: Unicode CLDR, locales es-US and es-ES. */
const strangeIn = (lang: string, paper: string) =>
  lang === 'en' || (lang === 'es' && paper === 'letter') ? point : comma;

describe.each(demos)('the sheets of $slug', ({ packet }) => {
  describe.each(languages)('in %s', (lang) => {
    const own = spoken(packet, lang);
    const sheets = makeSheets(own, words);

    test('can be said, with every figure', () => {
      expect(JSON.stringify(sheets)).not.toMatch(/undefined|NaN|\[object/);
    });

    test('write every figure with the decimal mark of the language', () => {
      const page = sawPage(own, lang, words.say(lang));
      const texts = textsOf([sheets.map(({ data }) => data), page.surfaces]);
      expect(strangeDecimals(texts, strangeIn(lang, own.spec.print.paper))).toEqual([]);
    });

    test('and its notes can be said', () => {
      for (const { code } of packet.notes) expect(words.has(lang, code), code).toBe(true);
      for (const { text } of noteLines(packet, words, lang)) expect(text).not.toMatch(/undefined|NaN|[{}]/);
    });
  });
});
