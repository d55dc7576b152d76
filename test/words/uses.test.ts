import { describe, expect, test } from 'vitest';
import { wordsOf } from './catalogues.ts';
import { keysAsked, keysMade, speakers, wordsHeld } from './uses.ts';

const words = wordsOf('en');
const held = new Set(speakers.flatMap(({ text }) => wordsHeld(text)));

/** Keys made from a code that is itself a variable, so that no literal tells them: where, and their form. */
const MADE_FROM_CODES: Readonly<Record<string, RegExp>> = {
  'site/problemLine.ts: found': /^problem\.(.+)\.found$/,
  'site/problemLine.ts: expected': /^problem\.(.+)\.expected$/,
  'site/problemLine.ts: fix': /^problem\.(.+)\.fix$/,
  'care/usedLines.ts: nothing to print yet': /^(care\.used\..+)\.blank$/,
};
const made = [...speakers.flatMap(({ text }) => keysMade(text)), ...Object.values(MADE_FROM_CODES)];

/** Whether a key stands in a text as it is, or is put together of parts that do. */
const isUsed = (key: string): boolean =>
  held.has(key) || made.some((one) => one.exec(key)?.slice(1).every(isUsed) ?? false);

describe('words and those who say them', () => {
  test('every word is said somewhere', () => {
    expect(Object.keys(words).filter((key) => !isUsed(key))).toEqual([]);
  });

  test.each(speakers.filter(({ text }) => keysAsked(text).length > 0))(
    '$path asks for words that are there',
    ({ text }) => {
      expect(keysAsked(text).filter((key) => !(key in words))).toEqual([]);
    },
  );

  test('every key that is made fits one word at least', () => {
    const keys = Object.keys(words);
    const tops = new Set(keys.map((key) => key.split('.')[0]!));
    const ofWords = made.filter(({ source }) => tops.has(/^\^\(?([\w-]+)/.exec(source)?.[1] ?? ''));
    const idle = ofWords.filter((one) => !keys.some((key) => one.test(key)));
    expect(ofWords.length).toBeGreaterThan(10);
    expect(idle).toEqual([]);
  });
});

describe('the checks see', () => {
  test.each([
    ["t('site.date')", ['site.date']],
    ["{{ t2('sheet.zone.before', {n: 1}) }}", ['sheet.zone.before']],
    ["words.say(lang)('site.page')", ['site.page']],
    ["sayIn(sheet.lang, 'site.head', sheet.head)", ['site.head']],
    ['say(code)', []],
  ])('the keys of %s', (text, keys) => {
    expect(keysAsked(text)).toEqual(keys);
  });

  test.each([
    [`say(\`sheet.\${name}.title\`)`, 'sheet.saw-list.title', 'sheet.saw-list.question'],
    ["t('site.bundle.' + name)", 'site.bundle.crew', 'site.date'],
    ["t('sheet.measuring.' + key + 'Fields')", 'sheet.measuring.doorFields', 'sheet.measuring.door'],
  ])('the keys made by %s', (text, fits, not) => {
    const [one] = keysMade(text);
    expect([one!.test(fits), one!.test(not)]).toEqual([true, false]);
  });
});
