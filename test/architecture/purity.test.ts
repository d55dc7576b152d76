import { describe, expect, test } from 'vitest';
import { impurities } from './support/impurities.ts';
import { type nodesIn, readSource, readSources } from './support/sources.ts';

const core = readSources().filter(({ folder }) => folder !== 'site');

describe('outside src/site', () => {
  test('nothing asks for files, clock, chance, processes or the habits of the machine', () => {
    expect(core.flatMap(impurities)).toEqual([]);
  });

  test('no variable outlives a call', () => {
    const variables = core.flatMap(({ path, program }) =>
      (program.body as ReturnType<typeof nodesIn>)
        .flatMap((node) => [node, node.declaration as typeof node | undefined])
        .filter((node) => node?.type === 'VariableDeclaration' && node.kind !== 'const')
        .map(() => path),
    );
    expect(variables).toEqual([]);
  });
});

describe('the check finds', () => {
  test.each([
    ['const a = Date.now();', 'Date.now'],
    ['const a = new Date();', 'new Date()'],
    ['const a = Date();', 'Date()'],
    ['const a = Math.random();', 'Math.random'],
    ['const { cwd } = process;', 'process'],
    ['const a = { process };', 'process'],
    ["const a = () => fetch('x');", 'fetch'],
    ['const a = performance.now();', 'performance'],
    ['const a = import.meta.dirname;', 'import.meta'],
    ["const a = 'b'.localeCompare('c');", 'localeCompare'],
    ['const a = DateTime.now();', 'DateTime.now'],
  ])('%s', (text, found) => {
    expect(impurities(readSource('job/a.ts', text))).toEqual([`job/a.ts:1 ${found}`]);
  });

  test.each([
    "const a = new Date('2027-03-01');",
    'const a = work.process;',
    'const a = { process: 1 };',
    '// Date.now()',
  ])('nothing in %s', (text) => {
    expect(impurities(readSource('job/a.ts', text))).toEqual([]);
  });
});
