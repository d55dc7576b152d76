import { describe, expect, test } from 'vitest';
import { longFunctions } from './shortfalls.ts';
import { functionsOf } from './support/functions.ts';
import { readSource, readSources } from './support/sources.ts';

const sources = readSources();
const functions = sources.flatMap(functionsOf);
const files = sources.map(({ path, text }) => ({ name: path, lines: text.trimEnd().split('\n').length }));

/** The share of things that have fewer lines than a bound, and the names of those that have not. */
function under(bound: number, sized: readonly { readonly name: string; readonly lines: number }[]) {
  const over = sized.filter(({ lines }) => lines >= bound);
  const names = over.sort((a, b) => b.lines - a.lines).map(({ name, lines }) => `${name}: ${lines}`);
  return { share: 1 - over.length / sized.length, names };
}

describe('sizes', () => {
  test('no function is longer than 60 lines but those known', () => {
    const known = new Map(longFunctions.map(({ name, most }) => [name, most]));
    const over = functions.filter(({ name, lines }) => lines > (known.get(name) ?? 60));
    expect(over).toEqual([]);
  });

  test('a known long function is still long', () => {
    const mended = longFunctions.filter(
      (known) => !functions.some(({ name, lines }) => name === known.name && lines > 60),
    );
    expect(mended).toEqual([]);
  });

  test('nine tenths of the functions have under 30 lines', () => {
    const { share, names } = under(30, functions);
    expect(share, names.join('\n')).toBeGreaterThanOrEqual(0.9);
  });

  test('nine tenths of the files have under 200 lines', () => {
    const { share, names } = under(200, files);
    expect(share, names.join('\n')).toBeGreaterThanOrEqual(0.9);
  });

  test('a function is measured from its first line to its last and bears the name of what holds it', () => {
    const text = 'export const outer = {\n  inner: () =>\n    1,\n};\nfunction two() {\n}\n';
    expect(functionsOf(readSource('a/b.ts', text))).toEqual([
      { name: 'a/b.ts inner', lines: 2 },
      { name: 'a/b.ts two', lines: 2 },
    ]);
  });
});
