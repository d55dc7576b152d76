import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { jsonSchema } from '../../../src/job/jsonSchema.ts';
import { readJob } from '../../../src/job/readJob.ts';
import { askedFields } from '../../../src/sheets/measuring/askedFields.ts';
import { readWords } from '../../../src/site/words.ts';
import { allPaths, matches } from './schemaPaths.ts';

/** Keys that the first visit doesn't ask for, each with the reason. */
const NOT_ASKED: readonly (readonly [pattern: RegExp, why: string])[] = [
  [
    /^(status|revision\/letter|picture|print\/|work\/|products\/|saw\/|offcuts\/|waste\/)/,
    'settled in the office',
  ],
  [
    /^floor\/(pattern|border|inlays|start|zones|falls|min |taper shows|focal weight)/,
    'the choice of owner and setter, not a measure',
  ],
  [/(^floor|\/)\/?gap( max)?$/, 'a rule of the trade unless somebody wants another'],
  [
    /^(base\/(fill bag|fill wait|laboratory wait|moisture\/limit)|tile\/<name>\/wet friction)$/,
    'the figure of a product, from its own sheet',
  ],
  [/^base\/(flatness grid|cracks\/<name>|hollow\/<name>)\/floor$/, 'a sheet for each floor'],
  [/^base\/flatness grid\/heights$/, 'the same readings taken upward'],
  [/^floor\/(set aside|(walls|diagonals)\/<name>\/precision)$/, 'told when the readings are judged'],
  [/^floors\//, 'the same questions, a sheet for each floor'],
  [/^floor\/doorways\/<name>\/(left|right)\/.+/, 'the long form of what the sides are asked for'],
  [/^floor\/doorways\/<name>\/(touch|seen)$/, 'a door line is out of reach and plain'],
  [/^base\/new\//, 'what will come on: chosen, not found'],
  [/^base\/heights\/<name>\/wanted$/, 'wished for, not found'],
  [
    /^tile\/<name>\/(hexagon|octagon|rhombus|chevron|round|mosaic)/,
    'written by hand in place of length and width',
  ],
  [/^tile\/<name>\/(turns|mock-up\/.+|box\/price)$/, 'told by the owner or the shop'],
];

const words = readWords(join(import.meta.dirname, '../../../layouts/words'));
const asked = askedFields.map(({ path }) => path.join('/'));
const inSchema = allPaths(jsonSchema());

describe('what the measuring sheet asks is what the job file takes', () => {
  test.each(askedFields.map((field) => [field.path.join(' › '), field.path] as const))('%s', (_, path) => {
    expect(inSchema.some((one) => matches(one, path))).toBe(true);
  });

  test('no key of the first visit is forgotten', () => {
    const left = inSchema.filter((path) => !NOT_ASKED.some(([pattern]) => pattern.test(path.join('/'))));
    // A map may have a short form, such as a wall that is but its readings: its keys stand for it.
    const isAsked = (path: readonly string[]) =>
      askedFields.some((field) => matches(path, field.path.slice(0, path.length)));
    const missing = left.filter((path) => !isAsked(path)).map((path) => path.join('/'));
    expect(missing).toEqual([]);
  });

  test('and no reason for leaving one out is idle', () => {
    const paths = inSchema.map((path) => path.join('/'));
    expect(NOT_ASKED.filter(([pattern]) => !paths.some((path) => pattern.test(path)))).toEqual([]);
  });

  test('nothing is asked twice', () => {
    expect(new Set(asked).size).toBe(asked.length);
  });

  test('each question has words, and each choice, in both languages', () => {
    const keys = askedFields.flatMap(({ words: key, choices = [] }) => [
      key,
      ...choices.map((choice) => `ask.choices.${choice}`),
    ]);
    for (const lang of ['en', 'es']) for (const key of keys) expect(words.say(lang)(key)).not.toBe(key);
  });

  test('what is required is what a file cannot be read without', () => {
    const { problems } = readJob('{}', 'job.yaml', 'x');
    const lacking = problems.map(({ figures }) => figures.key).filter((key) => key !== undefined);
    const tops = askedFields.filter(({ required }) => required).map(({ path }) => path[0]);
    expect(lacking.filter((key) => !tops.includes(String(key)))).toEqual([]);
    expect(lacking.length).toBeGreaterThan(2);
  });
});
