import { describe, expect, test } from 'vitest';
import { tilePages } from '../../src/sheets/tilePages.ts';

const tiles = (count: number) =>
  Array.from({ length: count }, (_, i) => ({
    parts: [{ piece: `K${i}-1`, settings: [8128], later: 0 }],
  }));

describe('a list by tile that would spill a few lines on a further page', () => {
  test('has lower lines where that saves the page', () => {
    expect(tilePages([tiles(60)], 'letter')).toEqual({ low: false, together: false });
    expect(tilePages([tiles(84)], 'letter').low).toBe(true);
    expect(tilePages([tiles(130)], 'letter')).toEqual({ low: false, together: false });
  });

  test('keeps its end together where no lower line saves the page', () => {
    expect(tilePages([tiles(93)], 'letter')).toEqual({ low: false, together: true });
  });
});
