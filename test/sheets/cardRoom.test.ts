import { describe, expect, test } from 'vitest';
import { cardSpace } from '../../src/drawing/index.ts';
import { roomOf } from '../../src/sheets/cardRoom.ts';

const names = (count: number) => Array.from({ length: count }, (_, i) => `K${i + 1}-12`);

describe('the room of a card', () => {
  test('is the whole of it over a row of pieces', () => {
    expect(roomOf(['K1-5'], []).single).toEqual(cardSpace);
    expect(roomOf(names(3), []).single).toEqual(cardSpace);
  });

  test('is less by each further row of them, by as much as a box is high at least', () => {
    const heights = [3, 6, 9].map((count) => roomOf(names(count), []).single.heightMm);
    expect(heights[0]! - heights[1]!).toBeGreaterThan(0);
    expect(heights[1]! - heights[2]!).toBeGreaterThanOrEqual(7);
  });

  const notes = ['The middle lies off the tile: use its template.', 'Its own words once more in another.'];

  test('is the whole of it with words beside a piece', () => {
    expect(roomOf(['K1-5'], notes).single).toEqual(cardSpace);
  });

  test('is less where words go on to a second line under a row of pieces, and not on a wide card that has room beside', () => {
    const { single, doubles } = roomOf(names(3), notes);
    expect(single.heightMm).toBeLessThan(cardSpace.heightMm);
    expect(doubles.find(({ widthMm }) => widthMm > cardSpace.widthMm)!.heightMm).toBe(cardSpace.heightMm);
  });
});
