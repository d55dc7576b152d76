import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { flattenKeys, makeWords, readWords } from '../../src/site/words.ts';

const words = makeWords({
  en: { hello: 'Hello {name}', tiles: '{n, plural, one {# tile} other {# tiles}}', tag: '<b>{name}</b>' },
  es: { hello: 'Hola {name}' },
});

describe('words', () => {
  test('say a code with its figures in the language asked for', () => {
    expect(words.say('en')('hello', { name: 'Ana' })).toBe('Hello Ana');
    expect(words.say('es')('hello', { name: 'Ana' })).toBe('Hola Ana');
  });

  test('follow the plural of the language', () => {
    expect([1, 2].map((n) => words.say('en')('tiles', { n }))).toEqual(['1 tile', '2 tiles']);
  });

  test('take angle brackets for text', () => {
    expect(words.say('en')('tag', { name: '<i>' })).toBe('<b><i></b>');
  });

  test.each([
    ['a missing code', () => words.say('es')('tiles'), /"tiles".*"es"/],
    ['a missing language', () => words.say('fr'), /"fr".*en, es/],
    ['a missing figure', () => words.say('en')('hello'), /"hello".*"en".*name/],
  ])('throw on %s and name it', (_, wrong, message) => {
    expect(wrong).toThrow(message);
  });

  test('read nested keys as codes with dots', () => {
    expect(flattenKeys({ a: { b: { c: 'x' }, d: 'y' } })).toEqual({ 'a.b.c': 'x', 'a.d': 'y' });
  });
});

describe('the catalogues', () => {
  const folder = join(import.meta.dirname, '../../layouts/words');
  const { languages, codes } = readWords(folder);

  test.each(languages)('%s has every code that another language has', (lang) => {
    const all = languages.flatMap((other) => codes(other));
    expect(all.filter((code) => !codes(lang).includes(code))).toEqual([]);
  });
});
