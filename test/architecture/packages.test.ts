import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { ROOT, readSource, readSources } from './support/sources.ts';

const { dependencies, devDependencies } = JSON.parse(readFileSync(join(ROOT, 'package.json'), 'utf8'));
const packageOf = (name: string): string => /^(@[^/]+\/)?[^/]+/.exec(name)![0];
const own = (names: readonly string[]) => [
  ...new Set(names.filter((name) => !name.startsWith('node:')).map(packageOf)),
];

const used = own(readSources().flatMap(({ packages }) => packages));
const tests = readdirSync(join(ROOT, 'test'), { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.ts'))
  .map((name) => readSource(name, readFileSync(join(ROOT, 'test', name), 'utf8')));
const usedInTests = own(tests.flatMap(({ packages }) => packages));

/** Packages that are read or run and never imported: fonts, a script for the browser, the checkers. */
const RUN = new Set(['@fontsource/atkinson-hyperlegible-next', 'axe-core', '@biomejs/biome', 'typescript']);

describe('packages', () => {
  test('that src imports are dependencies', () => {
    expect(used.filter((name) => !(name in dependencies))).toEqual([]);
  });

  test('that the tests import are dependencies, or come with vitest', () => {
    const known = { ...dependencies, ...devDependencies, vite: 'with vitest' };
    expect(usedInTests.filter((name) => !(name in known))).toEqual([]);
  });

  test('are each used', () => {
    const idle = Object.keys({ ...dependencies, ...devDependencies }).filter(
      (name) => !RUN.has(name) && !name.startsWith('@types/') && ![...used, ...usedInTests].includes(name),
    );
    expect(idle).toEqual([]);
  });

  test('have exact versions', () => {
    const loose = Object.entries({ ...dependencies, ...devDependencies }).filter(
      ([, version]) => !/^\d/.test(String(version)),
    );
    expect(loose).toEqual([]);
  });
});
