import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { askedFields } from '../../src/sheets/measuring/askedFields.ts';
import { jobKeys } from '../architecture/support/jobKeys.ts';
import { speakers, templates } from './uses.ts';

/** Text that a template may hold, because it is the name of a file or of a format and the same in every language. */
const NAMES = new Set(['packet.json', '(PDF)']);

/** What is left of a template when all that isn't read aloud is taken out: front matter, comments, code, styles. */
const withoutCode = (text: string): string =>
  text
    .replace(/^---\n[\s\S]*?\n---\n/, '')
    .replace(/\{#[\s\S]*?#\}|\{%[\s\S]*?%\}|\{\{[\s\S]*?\}\}/g, ' ')
    .replace(/<style[\s\S]*?<\/style>|<!doctype[^>]*>|<!--[\s\S]*?-->/gi, ' ');

/** Words that stand in a template itself, between tags or in an attribute that is read aloud. */
function literalWords(text: string): string[] {
  const code = withoutCode(text);
  const spoken = [...code.matchAll(/\b(?:alt|title|placeholder|aria-label|aria-description)="([^"]*)"/g)].map(
    (match) => match[1]!,
  );
  const between = code.split(/<[^>]*>/);
  return [...between, ...spoken]
    .map((piece) => piece.replace(/&[#\w]+;/g, ' ').trim())
    .filter((piece) => /\p{L}/u.test(piece) && !NAMES.has(piece));
}

describe('a template holds no words of its own', () => {
  test.each(templates)('$path', ({ text }) => {
    expect(literalWords(text)).toEqual([]);
  });

  test.each([
    ['<p>Hello {{ name }}</p>', ['Hello']],
    ['<img alt="A plan">', ['A plan']],
    ['<p>{{ n }} × <b>12</b> · – ______</p>', []],
    ['{# a note #}<style>p { color: red }</style><a href="./packet.json">packet.json</a>', []],
    ['---\nlang: en\n---\n{% if a %}{{ t("b.c") }}{% endif %}', []],
  ])('the check sees %s', (text, found) => {
    expect(literalWords(text)).toEqual(found);
  });
});

/** Literals that look like a sentence or a heading: two words or more, or one with a capital before small letters. */
const SENTENCE = /^(?=.*\p{L}{2}.* .*\p{L}{2})[\p{L}\d ,.:;'’–-]+$/u;

/** What a pen writes for a machine to read. */
const STYLES = new Set(["'Atkinson Hyperlegible Next', sans-serif", 'font-variant-numeric: tabular-nums']);

/** Keys and values of the job file, which are the same in every language. */
const KEYS = new Set([
  ...jobKeys().flatMap((key) => key.split('.')),
  ...askedFields.flatMap(({ choices = [] }) => choices),
]);

/** Sentences that a source holds outside of errors that it throws and of comments. */
function sentences(text: string): string[] {
  const code = text
    .replace(/\/\*[\s\S]*?\*\/|(?<!:)\/\/.*$/gm, '')
    .replace(/throw new \w+\((?:[^()]|\([^()]*\))*\)/g, '');
  return [...code.matchAll(/'([^'\n]*)'|"([^"\n]*)"/g)]
    .map((match) => match[1] ?? match[2] ?? '')
    .filter((literal) => SENTENCE.test(literal) && !STYLES.has(literal) && !KEYS.has(literal));
}

describe('sheets and drawings hold no words of their own', () => {
  const sources = speakers.filter(({ path }) => /^src\/(sheets|drawing)\//.test(path));

  test.each(sources)('$path', ({ text }) => {
    expect(sentences(text)).toEqual([]);
  });

  test.each([
    ["text(at, 'Snap this line');", ['Snap this line']],
    ["throw new RangeError('no tile of this name');", []],
    ["say('set-out.first'); // a note in words", []],
  ])('the check sees %s', (text, found) => {
    expect(sentences(text)).toEqual(found);
  });
});

// What a crew of two languages has to find on paper, in the template and under the key.
describe('a crew of two languages reads both of', () => {
  test.each([
    ['layout-plan', 'layout-plan.across'],
    ['zone', 'zone.noWayOut'],
    ['hard-cuts', 'hard-cuts.broken'],
    ['labels', 'labels.ends'],
    ['labels', "labels.' + step"],
  ])('%s: %s', (template, key) => {
    const path = join(import.meta.dirname, `../../layouts/_includes/sheets/${template}.njk`);
    const text = readFileSync(path, 'utf8');
    expect(text).toContain(`t('sheet.${key}`);
    expect(text).toContain(`t2('sheet.${key}`);
  });
});
