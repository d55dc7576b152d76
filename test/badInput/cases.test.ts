import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import type { Problem } from '../../src/job/Problem.ts';
import { placeProblems } from '../../src/job/placeProblems.ts';
import { readJob } from '../../src/job/readJob.ts';
import { makePacket } from '../../src/packet/makePacket.ts';
import { problemLine } from '../../src/site/problemLine.ts';
import { readWords } from '../../src/site/words.ts';

const CASES = join(import.meta.dirname, 'cases');
const words = readWords(join(import.meta.dirname, '../../layouts/words'));

interface Expected {
  readonly code: string;
  readonly line: number;
  readonly column: number;
  /** What the sentences must name, in every language. */
  readonly says: readonly string[];
}

/** The problems of a case as a build finds them: of the reading, else of the room and the layout. */
function problemsOf(name: string): readonly Problem[] {
  const text = readFileSync(join(CASES, name, 'job.yaml'), 'utf8');
  const file = `jobs/${name}/job.yaml`;
  const { job, problems } = readJob(text, file);
  if (!job) return problems;
  const made = makePacket(job);
  return 'problems' in made ? placeProblems(made.problems, text, file) : [];
}

/** Thousands are parted in a way of each language's own. */
const plain = (line: string) => line.replace(/(?<=\d)[.,](?=\d{3})/g, '');

describe.each(readdirSync(CASES))('bad input: %s', (name) => {
  const expected: readonly Expected[] = JSON.parse(readFileSync(join(CASES, name, 'expected.json'), 'utf8'));

  test('is refused, every mistake with its line and column', () => {
    const places = problemsOf(name).map(({ code, line, column }) => ({ code, line, column }));
    expect(places).toEqual(expected.map(({ code, line, column }) => ({ code, line, column })));
  });

  test.each(['en', 'es'])('is told in "%s": what was found, what was expected, the way out', (lang) => {
    problemsOf(name).forEach((problem, i) => {
      const parts = ['found', 'expected', 'fix'].map((part) => `problem.${problem.code}.${part}`);
      expect(parts.filter((code) => !words.has(lang, code))).toEqual([]);
      const line = problemLine(problem, words, lang);
      const { line: row, column, says } = expected[i]!;
      expect(line.startsWith(`jobs/${name}/job.yaml:${row}:${column}: `)).toBe(true);
      for (const figure of says) expect(plain(line)).toContain(figure);
    });
  });
});
