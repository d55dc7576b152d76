import { describe, expect, test } from 'vitest';
import { partsOfPage, savesPage } from '../../src/sheets/savesPage.ts';

const row = (pieces = 1) => ({
  pieces: Array.from({ length: pieces }, (_, i) => `K${i + 1}-1`),
  marks: [1, 2],
  next: [],
  many: false,
});
const rows = (count: number) => Array.from({ length: count }, () => row());
const list = (count: number) => [{ fences: [], marked: rows(count) }];

describe('lower rows of the saw list', () => {
  // A letter page holds 237.4 mm: the rule, a head and 21 rows of 10.3 mm.
  test('are asked for where they spare a page for a line or two', () => {
    expect(savesPage(list(22), 'letter')).toBe(true);
    expect(savesPage(list(23), 'letter')).toBe(true);
  });

  test('are left where the list fits, or fills more of its last page', () => {
    expect(savesPage(list(20), 'letter')).toBe(false);
    expect(savesPage(list(26), 'letter')).toBe(false);
  });

  test('count the lines of boxes of a cut with many pieces', () => {
    expect(savesPage([{ fences: [], marked: [...rows(19), row(12)] }], 'letter')).toBe(true);
  });
});

describe('rows under one fence setting', () => {
  test('are one group as long as a page holds them', () => {
    expect(partsOfPage(rows(20), 'letter').map(({ length }) => length)).toEqual([20]);
    expect(partsOfPage([], 'letter')).toEqual([]);
  });

  // 237.4 mm less the rule and a head leave 221.9: 21 rows of 10.3 mm.
  test('are parted where a page ends, so that each part has its setting', () => {
    expect(partsOfPage(rows(50), 'letter').map(({ length }) => length)).toEqual([21, 21, 8]);
    expect(partsOfPage([row(200), row()], 'letter').map(({ length }) => length)).toEqual([1, 1]);
  });
});
