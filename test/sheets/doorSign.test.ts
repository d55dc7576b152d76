import { describe, expect, test } from 'vitest';
import { hasToilet } from '../../src/job/hasToilet.ts';
import { languages } from '../../src/job/languages.ts';
import { demoTexts, inLanguage, sheetsOf, words } from './demos.ts';

interface Sign {
  readonly water: string;
  readonly toilet: string;
  readonly noToilet: string;
}

const signOf = (slug: string, lang: string) => {
  const { packet, sheets } = sheetsOf(slug, inLanguage(demoTexts[slug]!, lang), ['door-sign', 'care-sheet']);
  const dataOf = (name: string) => sheets.find(({ template }) => template === name)!.data;
  return { packet, sign: dataOf('door-sign') as Sign, care: dataOf('care-sheet') as { wet: string } };
};

const signs = Object.keys(demoTexts).filter((slug) => slug !== 'almond-hall');

describe.each(signs.flatMap((slug) => languages.map((lang) => [slug, lang] as const)))(
  'the sign on the door of %s in %s',
  (slug, lang) => {
    const { packet, sign, care } = signOf(slug, lang);

    test('tells the water date of the care sheet', () => {
      expect(sign.water).toContain(care.wet);
    });

    test('tells when the toilet is back, where there is one, once', () => {
      const told = [sign.toilet, sign.noToilet].filter((line) => line !== '');
      expect(told).toHaveLength(hasToilet(packet.spec) ? 1 : 0);
    });

    test('says that dates may move', () => {
      expect(words.say(lang)('sheet.door-sign.changed')).toMatch(
        /^(?:Dates may move|Las fechas pueden|As datas podem)/,
      );
    });
  },
);

// The bath of the demos opens on 29 May; its calendar has heavy use from 1 June and water from 5 June on.
test('the sign of the bath has the dates of its calendar', () => {
  const { sign } = signOf('rowan-bath', 'en');
  expect(sign.water.replaceAll(/\s/g, ' ')).toBe('No water on the floor before Sat, Jun 5, 7 AM.');
  expect(sign.toilet.replaceAll(/\s/g, ' ')).toBe('The toilet is back after Tue, Jun 1, 7 AM.');
});
