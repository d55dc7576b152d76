import { basename } from 'node:path';
import { describe, expect, test } from 'vitest';
import { subjects } from './shortfalls.ts';
import { readSource, readSources, type Source } from './support/sources.ts';

const sources = readSources();
const ownName = (path: string): string => basename(path).replace(/\.(ts|mjs)$/, '');
const plain = (name: string): string => name.toLowerCase().replaceAll('_', '').replace(/s$/, '');

/** Files that gather others, and those that are started and export nothing. */
const nameless = ({ path, exports }: Source): boolean => ownName(path) === 'index' || exports.length === 0;

/** A file of one export bears its name; of several, one at least has the file's name in its own. A default export bears any. */
function wellNamed({ path, exports }: Source): boolean {
  const name = ownName(path);
  if (exports.includes('default') || exports.includes(name)) return true;
  return exports.length > 1 && exports.some((other) => plain(other).includes(plain(name)));
}

describe('a file bears the name of what it exports', () => {
  const wrong = sources.filter((file) => !nameless(file) && !wellNamed(file)).map(({ path }) => path);

  test('but for those that bear the name of their subject', () => {
    expect(wrong.filter((path) => !(path in subjects))).toEqual([]);
  });

  test('and each of those is still there and still otherwise named', () => {
    expect(Object.keys(subjects).filter((path) => !wrong.includes(path))).toEqual([]);
  });

  test.each([
    ['room/wall.ts', 'export const wall = 1;', true],
    ['room/Wall.ts', 'export interface Wall {}', true],
    ['room/wall.ts', 'const a = 1;\nexport { a as wall };', true],
    ['room/wall.ts', 'export const wallLength = 1;\nexport const wallName = 2;', true],
    ['room/wall.ts', 'export const wallLength = 1;', false],
    ['room/wall.ts', 'const wall = 1;\nexport const other = wall;', false],
  ])('%s with %s: %s', (path, text, expected) => {
    expect(wellNamed(readSource(path, text))).toBe(expected);
  });
});
