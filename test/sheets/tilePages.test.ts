import { describe, expect, test } from 'vitest';
import { tilePages } from '../../src/sheets/tilePages.ts';

const tiles = (count: number) =>
  Array.from({ length: count }, (_, i) => ({
    parts: [{ piece: `K${i}-1`, settings: [8128], later: 0 }],
  }));

const LETTER = { paper: 'letter', crew: ['en'] } as const;

describe('a list by tile that would spill a few lines on a further page', () => {
  test('has lower lines where that saves the page', () => {
    expect(tilePages([tiles(60)], LETTER)).toEqual({ low: false, together: false });
    expect(tilePages([tiles(84)], LETTER).low).toBe(true);
    expect(tilePages([tiles(130)], LETTER)).toEqual({ low: false, together: false });
  });

  test('counts the lines that a second language adds', () => {
    expect(tilePages([tiles(76)], LETTER).low).toBe(false);
    expect(tilePages([tiles(76)], { ...LETTER, crew: ['es', 'en'] }).low).toBe(true);
  });

  test('keeps its end together where no lower line saves the page', () => {
    expect(tilePages([tiles(93)], LETTER)).toEqual({ low: false, together: true });
  });
});
