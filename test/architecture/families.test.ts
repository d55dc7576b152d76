import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { sheets } from '../../src/sheets/sheets.ts';
import { ROOT, readSources, type Source } from './support/sources.ts';

const sources = readSources();
const file = (path: string): Source => sources.find((one) => one.path === path)!;

/** Members that neither the index nor another member takes in. */
function unlisted(index: string, members: readonly Source[]): string[] {
  const listed = new Set([file(index), ...members].flatMap(({ imports }) => imports));
  return members.map(({ path }) => path).filter((path) => !listed.has(path));
}

interface Family {
  readonly name: string;
  readonly index: string;
  readonly member: (source: Source) => boolean;
}

/** Families of interchangeable files, each with the one file that lists its members. */
const families: readonly Family[] = [
  {
    name: 'pattern',
    index: 'pattern/makePattern.ts',
    member: ({ path, text }) =>
      path.startsWith('pattern/') && /export function \w+\([^)]*\): Pattern\b/.test(text),
  },
  {
    name: 'sheet',
    index: 'sheets/sheets.ts',
    member: ({ path, text }) => path.startsWith('sheets/') && /export const \w+: Sheet = /.test(text),
  },
  {
    name: 'line of the material tally',
    index: 'materials/makeMaterials.ts',
    member: ({ path }) => /^materials\/\w+Lines?\.ts$/.test(path),
  },
  {
    name: 'group of limits',
    index: 'materials/makeLimits.ts',
    member: ({ path }) => /^materials\/limits\/\w+Limits\.ts$/.test(path),
  },
  ...['measure', 'geometry', 'trade'].map((folder) => ({
    name: `function of ${folder}`,
    index: `${folder}/index.ts`,
    member: ({ path, text }: Source) => path.startsWith(`${folder}/`) && text.includes('@example'),
  })),
];

describe.each(families)('every $name', ({ index, member }) => {
  const members = sources.filter((source) => source.path !== index && member(source));

  test(`is named in src/${index}`, () => {
    expect(members.length).toBeGreaterThan(1);
    expect(unlisted(index, members)).toEqual([]);
  });
});

describe('sheets', () => {
  test('have one name each', () => {
    expect(new Set(sheets.map(({ name }) => name)).size).toBe(sheets.length);
  });

  test('have one template each, and those they name besides, and no template is without its sheet', () => {
    const templates = readdirSync(join(ROOT, 'layouts', '_includes', 'sheets')).filter((name) =>
      name.endsWith('.njk'),
    );
    const named = sheets.flatMap(({ name, further = [] }) => [name, ...further]);
    expect(templates.sort()).toEqual(named.map((name) => `${name}.njk`).sort());
  });

  test('listed as they are written: as many as files that make one', () => {
    const makers = sources.filter(families.find(({ name }) => name === 'sheet')!.member);
    expect(sheets).toHaveLength(makers.length);
  });
});

/** Files that are started and not imported: the command line, its commands, what Eleventy loads, what a browser or a
 * thread begins with, and a build that is timed by itself. */
const STARTED =
  /^site\/(run\.mjs|typescriptPlugin\.mjs|siteParts\.ts|printWorker\.mjs|form\/startForm\.ts|bench\/(?:build|chips)Fresh\.ts|commands\/\w+\.ts)$/;

test('no file lies about that nothing imports', () => {
  const imported = new Set(sources.flatMap(({ imports }) => imports));
  const idle = sources.map(({ path }) => path).filter((path) => !imported.has(path) && !STARTED.test(path));
  expect(idle).toEqual([]);
});
