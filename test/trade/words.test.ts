import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { IntlMessageFormat } from 'intl-messageformat';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { makeCalendar } from '../../src/calendar/makeCalendar.ts';
import { makeCare } from '../../src/care/makeCare.ts';
import type { HeightSpec, Job } from '../../src/job/Job.ts';
import { languages } from '../../src/job/languages.ts';
import { makeHeights } from '../../src/materials/makeHeights.ts';
import { makeLimits } from '../../src/materials/makeLimits.ts';
import { makeMaterials } from '../../src/materials/makeMaterials.ts';
import { feet, figureKind, inches, type Step } from '../../src/trade/index.ts';
import { FLOOR, fieldLayout, JOB, TILE } from '../materials/plainJob.ts';

const ROOT = join(import.meta.dirname, '..', '..');
const catalogue = (lang: string): Record<string, string> =>
  parse(readFileSync(join(ROOT, 'layouts', 'words', `trade.${lang}.yaml`), 'utf8'));
const words = Object.fromEntries(languages.map((lang) => [lang, catalogue(lang)]));

/** A job in which nearly everything is wrong, so that nearly every sentence is said. */
const WRONG: Job = {
  ...JOB,
  joint: inches(1 / 32),
  work: { ...JOB.work, tempC: 5 },
  tiles: [{ ...TILE, length: inches(24), spread: inches(1 / 8), bow: inches(1 / 4), box: { pieces: 8 } }],
  surfaces: [
    { ...FLOOR, pattern: { ...FLOOR.pattern, name: 'running', offset: { numerator: 1, denominator: 2 } } },
  ],
  base: {
    ...JOB.base,
    heated: true,
    removed: [{ name: 'vinyl', thickness: 1016 }],
    fresh: [{ name: 'tile', thickness: inches(3 / 4) }],
    heights: (['flange', 'door', 'floor', 'appliance', 'other'] as const).flatMap((kind): HeightSpec[] =>
      [0, 1 / 4, 3 / 4, 5 / 8, 2].flatMap((height) => [
        { name: kind, kind, height: inches(height), above: 'boards' },
        { name: kind, kind, height: inches(height), above: 'boards', wanted: inches(1) },
      ]),
    ),
    flatness: [{ gap: inches(1), under: feet(10) }],
    cracks: [{ where: 'by the door', moving: true }],
    comesOut: [{ what: 'base' }],
  },
};
const { houseYear: _, ...OLD } = WRONG;

function said(job: Job): readonly Step[] {
  const layout = fieldLayout(feet(30), feet(40), job.joint, inches(1 / 16));
  const plan = {
    tile: 'field',
    whole: 1,
    cut: 1,
    needed: 2,
    bound: 2,
    from: [],
    breakage: 1,
    spare: 0,
    keep: 1,
    onHand: 1,
    buy: 3,
    boxes: 1,
    over: 5,
  };
  const limits = makeLimits(job, [layout]);
  const care = makeCare(job, makeCalendar(job, [{ number: 1, hours: 7 }]));
  return [
    ...limits.map(({ rule }) => ({ code: `limit.${rule}`, figures: {} })),
    ...limits.map(({ rule }) => ({ code: `limit.${rule}.why`, figures: {} })),
    ...limits.flatMap(({ wouldPass }) => (wouldPass ? [wouldPass] : [])),
    ...makeHeights(job).results,
    ...makeMaterials(job, [layout], { field: plan }).flatMap(({ what, sum }) => [
      { code: `material.${what}.name`, figures: {} },
      ...sum,
    ]),
    ...care.dos,
    ...care.donts,
    ...care.cautions,
    ...care.used,
  ];
}

const stone: Job = { ...JOB, tiles: [{ ...TILE, material: 'stone', glazed: false }] };
const spoken = [JOB, OLD, stone].flatMap(said);

/** Numbers stay numbers where they are counted; what carries a unit arrives as text. The sheet adds whether the floor is the only one, the units of the print, and the side that makes a tile a long one. */
const asPrinted = (figures: Step['figures']) => ({
  one: 'no',
  units: 'mm',
  side: '<side>',
  ...Object.fromEntries(
    Object.entries(figures).map(([k, v]) => [k, figureKind(k, v) === 'number' ? v : `<${v}>`]),
  ),
});

describe.each(Object.entries(words))('words in %s', (lang, messages) => {
  test('every sentence that a job can say is there, and its figures fit', () => {
    const failing = spoken.filter(({ code, figures }) => {
      const text = messages[code];
      if (text === undefined) return true;
      return String(new IntlMessageFormat(text, lang).format(asPrinted(figures))) === '';
    });
    expect(failing.map(({ code }) => code)).toEqual([]);
  });

  test('every key that the source names is there', () => {
    const sources = ['trade', 'materials', 'materials/limits', 'calendar', 'care'].flatMap((folder) =>
      readdirSync(join(ROOT, 'src', folder))
        .filter((name) => name.endsWith('.ts'))
        .map((name) => readFileSync(join(ROOT, 'src', folder, name), 'utf8')),
    );
    const named = sources.flatMap((text) => [
      ...text.matchAll(/'((?:height|material|care|caution)(?:\.\w+)+)'/g),
    ]);
    expect(named.length).toBeGreaterThan(50);
    const known = (key: string) => messages[key] !== undefined || messages[`${key}.blank`] !== undefined;
    expect(named.map(([, key]) => key!).filter((key) => !known(key))).toEqual([]);
  });
});

interface Element {
  readonly type: number;
  readonly value?: string;
  readonly options?: Readonly<Record<string, { readonly value: readonly Element[] }>>;
}

/** Names of the figures in a message; an element of type 0 is plain text. */
function figuresOf(elements: readonly Element[]): string[] {
  const names = elements.flatMap(({ type, value, options }) => [
    ...(type > 0 && value !== undefined ? [value] : []),
    ...Object.values(options ?? {}).flatMap((option) => figuresOf(option.value)),
  ]);
  return [...new Set(names)].sort();
}

test.each(languages)('%s has the keys and figures of the first language', (lang) => {
  const shape = (messages: Record<string, string>, lang: string) =>
    Object.fromEntries(
      Object.entries(messages).map(([key, text]) => [
        key,
        figuresOf(new IntlMessageFormat(text, lang).getAst() as unknown as Element[]),
      ]),
    );
  expect(shape(words[lang]!, lang)).toEqual(shape(words.en!, 'en'));
});
