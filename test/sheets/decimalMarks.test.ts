import { describe, expect, test } from 'vitest';
import { sawPage } from '../../src/sheets/sawPage.ts';
import { demoTexts, inLanguage, sheetsOf, words } from './demos.ts';

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

const marks = { en: /\d,\d/, es: /\d\.\d/, pt: /\d\.\d/ } as const;

describe.each(Object.entries(marks))('on sheets in %s', (lang, strange) => {
  test.each(Object.keys(demoTexts))(
    '%s writes every figure with the decimal mark of the language',
    (slug) => {
      const { packet, sheets } = sheetsOf(slug, inLanguage(demoTexts[slug]!, lang));
      const page = sawPage(packet, lang, words.say(lang));
      const texts = textsOf([sheets.map(({ data }) => data), page]);
      expect(strangeDecimals(texts, strange)).toEqual([]);
    },
  );
});
