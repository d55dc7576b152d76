import { describe, expect, test } from 'vitest';
import { circles } from './support/circles.ts';
import { folders, packagesOf } from './support/folders.ts';
import { readSource, readSources, type Source } from './support/sources.ts';

const sources = readSources();

/** Imports that run against the order of the folders. */
const against = (files: readonly Source[]): string[] =>
  files.flatMap(({ path, folder, imports }) =>
    imports
      .filter((other) => folders.indexOf(folder) < folders.indexOf(other.split('/')[0]!))
      .map((other) => `${path} imports ${other}`),
  );

/** Packages that a folder has no leave to import; `src/site` may import any. */
const foreign = (files: readonly Source[]): string[] =>
  files
    .filter(({ folder }) => folder !== 'site')
    .flatMap(({ path, folder, packages }) =>
      packages.filter((name) => !packagesOf[folder]?.includes(name)).map((name) => `${path} imports ${name}`),
    );

describe('imports', () => {
  test('every folder has its place in the order', () => {
    expect([...new Set(sources.map(({ folder }) => folder))].sort()).toEqual([...folders].sort());
  });

  test('run one way over the folders', () => {
    expect(against(sources)).toEqual([]);
  });

  test('make no circle among files', () => {
    expect(circles(new Map(sources.map(({ path, imports }) => [path, imports])))).toEqual([]);
  });

  test('take in only the packages that a folder may use, and no module of the machine', () => {
    expect(foreign(sources)).toEqual([]);
  });

  test('lead to files that are there', () => {
    const paths = new Set(sources.map(({ path }) => path));
    const lost = sources.flatMap(({ path, imports }) =>
      imports.filter((other) => /\.(ts|mjs)$/.test(other) && !paths.has(other)).map((other) => [path, other]),
    );
    expect(lost).toEqual([]);
  });
});

describe('the checks find', () => {
  const upward = readSource('measure/a.ts', "import type { Job } from '../job/Job.ts';\nexport const a = 1;");

  test('an import of a type against the order', () => {
    expect(against([upward])).toEqual(['measure/a.ts imports job/Job.ts']);
  });

  test('a re-export, an import at run time and the type of a module', () => {
    const text =
      "export * from './b.ts';\nexport const c = () => import('./c.ts');\nexport type D = import('./d.ts').D;";
    expect(readSource('room/a.ts', text).imports).toEqual(['room/b.ts', 'room/c.ts', 'room/d.ts']);
  });

  test('a module of the machine', () => {
    expect(foreign([readSource('job/a.ts', "import { readFileSync } from 'node:fs';")])).toEqual([
      'job/a.ts imports node:fs',
    ]);
  });

  test('a circle of three and a file that imports itself', () => {
    const graph = new Map([
      ['a', ['b']],
      ['b', ['c', 'd']],
      ['c', ['a']],
      ['d', ['d']],
    ]);
    expect(circles(graph)).toEqual([['a', 'b', 'c'], ['d']]);
  });
});
