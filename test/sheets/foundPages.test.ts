import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import type { FoundLine } from '../../src/sheets/foundLines.ts';
import { foundMm, foundPages } from '../../src/sheets/foundPages.ts';
import type { SheetContext } from '../../src/sheets/SheetContext.ts';
import { readWords } from '../../src/site/words.ts';

const say = readWords(join(import.meta.dirname, '../../layouts/words')).say('en');
const context = { say } as SheetContext;
const A4 = { widthMm: 178, heightMm: 255 };

const lines = (count: number, edge = 'A-B', deep = 1): readonly FoundLine[] =>
  Array.from({ length: count }, (_, i) => ({
    rows: `KN${i + 1}`,
    edge,
    space: '4 in',
    cuts: [i + 1],
    onCard: false,
    deep,
  }));
const counts = (found: readonly FoundLine[], takenMm = 0) =>
  foundPages(context, found, { ...A4, takenMm }).map((part) => part.length);

describe('found spaces on their pages', () => {
  test.each([1, 2, 7, 30, 56])('stand on one while it holds them: %i', (count) => {
    expect(counts(lines(count))).toEqual([count]);
  });

  test.each([61, 62, 80, 108])('are parted about evenly where it does not: %i', (count) => {
    const [first, second, ...more] = counts(lines(count));
    expect(more).toEqual([]);
    expect(first! + second!).toBe(count);
    expect(Math.abs(first! - second!)).toBeLessThanOrEqual(3);
  });

  test.each([57, 118, 130, 500])('keep their order and are all there: %i', (count) => {
    const found = lines(count);
    expect(foundPages(context, found, { ...A4, takenMm: 40 }).flat()).toEqual(found);
  });

  test('begin on a further page where what stands on theirs leaves no room for a few lines', () => {
    expect(counts(lines(20), 150)).toEqual([20]);
    expect(counts(lines(20), 200)[0]).toBeGreaterThanOrEqual(4);
    expect(counts(lines(20), 230)).toEqual([0, 20]);
  });
});

describe('the height of found spaces', () => {
  test('grows with a long name of an edge and with circles that stand in lines', () => {
    const plain = foundMm(context, lines(10), A4.widthMm);
    expect(foundMm(context, lines(10, 'antechamber of the servants'), A4.widthMm)).toBeGreaterThan(plain + 5);
    expect(foundMm(context, lines(10, 'A-B', 3), A4.widthMm)).toBeGreaterThan(plain + 5 * 10);
  });
});
