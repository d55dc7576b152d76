import { describe, expect, test } from 'vitest';
import { languages as offered } from '../../src/job/languages.ts';
import { figuresOf, languages, wordFiles, wordsOf } from './catalogues.ts';

/** The figures of every key of a language, or what is wrong with its words. */
const shapeOf = (lang: string): Record<string, string[] | string> =>
  Object.fromEntries(
    Object.entries(wordsOf(lang)).map(([key, message]) => {
      try {
        return [key, figuresOf(message, lang)];
      } catch (error) {
        return [key, `no message: ${(error as Error).message}`];
      }
    }),
  );

describe('words', () => {
  test('are there in every language that a job file may ask for, more than one', () => {
    expect(languages.length).toBeGreaterThan(1);
    expect(languages).toEqual([...offered].sort());
  });

  test('have the same parts in every language', () => {
    const parts = (lang: string) =>
      wordFiles
        .filter((file) => file.lang === lang)
        .map(({ part }) => part)
        .sort();
    for (const lang of languages) expect(parts(lang)).toEqual(parts('en'));
  });

  test.each(wordFiles)('of $name name no key twice', ({ words, name, lang, faults }) => {
    const others = wordFiles.filter((file) => file.lang === lang && file.name !== name);
    expect(faults).toEqual([]);
    expect(Object.keys(words).filter((key) => others.some((file) => key in file.words))).toEqual([]);
  });
});

describe.each(languages)('words in %s', (lang) => {
  test('are never empty and neither begin nor end with a blank', () => {
    const bad = Object.entries(wordsOf(lang)).filter(
      ([, message]) => message === '' || message !== message.trim(),
    );
    expect(bad).toEqual([]);
  });

  test('are messages that can be read, with the keys and figures of the first language', () => {
    expect(shapeOf(lang)).toEqual(shapeOf('en'));
    expect(Object.values(shapeOf(lang)).filter((shape) => typeof shape === 'string')).toEqual([]);
  });

  test('have every form of number that the language has, where they print the number', () => {
    const forms = new Intl.PluralRules(lang)
      .resolvedOptions()
      .pluralCategories.filter((form) => form !== 'many');
    const plurals = Object.entries(wordsOf(lang)).filter(([, message]) => /, plural,.*#/s.test(message));
    expect(plurals.length).toBeGreaterThan(0);
    const short = plurals.filter(([, message]) => !forms.every((form) => message.includes(`${form} {`)));
    expect(short.map(([key]) => key)).toEqual([]);
  });
});

test('figures of a message are told by name, a choice of words with its choices', () => {
  expect(figuresOf('{n, plural, one {# of {all}} other {#}} {way, select, a {x} other {y}}', 'en')).toEqual([
    'all',
    'n',
    'way(a,other)',
  ]);
});
