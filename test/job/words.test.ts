import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { languages } from '../../src/job/languages.ts';
import type { Problem } from '../../src/job/Problem.ts';
import { readJob } from '../../src/job/readJob.ts';
import { readWords } from '../../src/site/words.ts';

const SOURCE = join(import.meta.dirname, '..', '..', 'src', 'job');
const CASES = join(import.meta.dirname, 'cases');
const words = readWords(join(import.meta.dirname, '..', '..', 'layouts', 'words'));
const PARTS = ['found', 'expected', 'fix'];

/** Every code that the source gives. A text that is no text is told by the reader of its value, never as `notText`. */
const codes = readdirSync(SOURCE, { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.ts'))
  .flatMap((name) => {
    const text = readFileSync(join(SOURCE, name), 'utf8').replace(/\/\*\*[\s\S]*?\*\//g, '');
    const given = [...text.matchAll(/(?:\bbad\(\s*|\btrouble\(\s*notes,\s*|\bcode: )'([a-zA-Z]+)'/g)];
    return [...given, ...text.matchAll(/'(not[A-Z]\w*|bareNumber)'/g)].map((match) => match[1]!);
  })
  .filter((code) => code !== 'notText');

const problems: readonly (readonly [string, Problem])[] = readdirSync(CASES).flatMap((name) =>
  readJob(readFileSync(join(CASES, name, 'job.yaml'), 'utf8'), 'job.yaml', name).problems.map(
    (problem) => [`${name}: ${problem.code}`, problem] as const,
  ),
);

describe.each(languages)('the words of problems in %s', (lang) => {
  test.each([...new Set(codes)].sort())(
    '%s has what was found, what was expected and the way out',
    (code) => {
      for (const part of PARTS) expect(words.has(lang, `problem.${code}.${part}`)).toBe(true);
    },
  );

  test.each(problems)('%s makes whole sentences', (_name, { code, found, figures }) => {
    for (const part of PARTS) {
      const sentence = words.say(lang)(`problem.${code}.${part}`, { found, ...figures });
      expect(sentence).toMatch(/^\S.*[.:)]$/s);
      expect(sentence).not.toMatch(/undefined|NaN| {2}/);
    }
  });
});

test('every code of the catalogue is told in every language', () => {
  const keys = languages.map((lang) =>
    readFileSync(
      join(import.meta.dirname, '..', '..', 'layouts', 'words', `problems.${lang}.yaml`),
      'utf8',
    ).match(/^ {2}\w+:/gm),
  );
  for (const other of keys) expect(other).toEqual(keys[0]);
});
