import { describe, expect, test } from 'vitest';
import { languages } from '../../src/job/languages.ts';
import { makeSheets } from '../../src/sheets/makeSheets.ts';
import { demos, demoTexts, inLanguage, sheetsOnce, words } from './demos.ts';

/** What is asked before a floor is laid alone. */
const BEFORE = {
  en: /before you set|do not tile over/i,
  es: /antes de colocar:|no tape antes/i,
  pt: /antes de assentar:|não cubra antes/i,
} as const;

describe.each(languages)('the hall, in %s', (lang) => {
  const { packet, sheets } = sheetsOnce('almond-hall', inLanguage(demoTexts['almond-hall']!, lang));
  const planned = makeSheets({ ...packet, job: { ...packet.job, status: 'planned' } }, words);
  const textOf = (all: typeof planned, ...kinds: readonly string[]) =>
    JSON.stringify(all.filter(({ template }) => kinds.includes(template)).map(({ data }) => data));

  test('asks for no answer before the tile over a base that moves, but what was done', () => {
    expect(textOf(planned, 'base-sheet')).toMatch(BEFORE[lang]);
    expect(textOf(planned, 'layout-plan')).toMatch(BEFORE[lang]);
    expect(textOf(sheets, 'base-sheet', 'layout-plan')).not.toMatch(BEFORE[lang]);
  });

  test('says on its record what the double line is, and leaves room for what was done', () => {
    expect(textOf(sheets, 'record')).toContain(words.say(lang)('sheet.record.carried'));
  });

  test('has no gate left to sign', () => {
    const [sheet] = sheets.filter(({ template }) => template === 'job-sheet');
    const { gates } = sheet!.data as { gates: readonly { signed?: boolean }[] };
    expect(gates.filter(({ signed }) => signed)).toEqual([]);
  });
});

test('a record of a floor whose base does not move tells of no double line', () => {
  const bath = demos.find(({ slug }) => slug === 'rowan-bath')!;
  const { data } = bath.sheets.find(({ template }) => template === 'record')!;
  expect((data as { moves: string }).moves).toBe('');
});
