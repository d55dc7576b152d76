import { describe, expect, test } from 'vitest';
import { planWindows } from '../../src/drawing/planWindows.ts';

/** A square piece of 10 ticks a side round its middle. */
const piece = (x: number, y: number) => ({
  box: { left: x - 5, bottom: y - 5, right: x + 5, top: y + 5 },
  pole: [x, y] as const,
});
/** A field of 200 by 200 ticks on pages of 120 by 120: two each way. */
const field = { left: 0, bottom: 0, right: 200, top: 200 };
const page = { width: 120, height: 120 };
/** Pieces all over the field, but for some. */
const grid = (has: (x: number, y: number) => boolean) =>
  Array.from({ length: 400 }, (_, i) => [5 + 10 * (i % 20), 5 + 10 * Math.floor(i / 20)] as const)
    .filter(([x, y]) => has(x, y))
    .map(([x, y]) => piece(x, y));
const partsOf = (pieces: ReturnType<typeof grid>) => planWindows(pieces, field, page);

describe('the parts of a plan', () => {
  test('are equal where all of them name pieces', () => {
    const parts = partsOf(grid(() => true));
    expect(parts.map(({ window }) => [window.right - window.left, window.top - window.bottom])).toEqual(
      Array(4).fill([100, 100]),
    );
  });

  test('leave out one in which no piece is named, and no line says that it is joined there', () => {
    const parts = partsOf(grid((x, y) => x < 100 || y < 100));
    expect(parts.map(({ next }) => next)).toEqual([{ below: 2 }, { right: 3, above: 1 }, { left: 2 }]);
  });

  test('leave out one into which a piece only reaches, and the part that names it shows it whole', () => {
    // Its middle is at 98, its end at 103: over the line at 100.
    const parts = partsOf([...grid((x, y) => x < 95 || y < 95), piece(98, 150)]);
    expect(parts).toHaveLength(3);
    expect(parts[0]!.window).toEqual({ left: 0, bottom: 100, right: 103, top: 200 });
  });

  test('are moved where that leaves out one, as for a few pieces over the line', () => {
    // Pieces end at 115 in the upper half: more than an equal part of 100, less than a page.
    const pieces = grid((x, y) => x < 115 || y < 100);
    const parts = partsOf(pieces);
    expect(parts).toHaveLength(3);
    for (const { box, pole } of pieces) {
      const own = parts.filter(
        ({ window: { left, right, bottom, top } }) =>
          pole[0] >= left && pole[0] < right && pole[1] >= bottom && pole[1] < top,
      );
      expect(own).toHaveLength(1);
      expect(box.right <= own[0]!.window.right || own[0]!.next.right !== undefined).toBe(true);
    }
  });

  test('fit their pages', () => {
    for (const { window } of partsOf(grid((x, y) => x < 115 || y < 100))) {
      expect(window.right - window.left).toBeLessThanOrEqual(page.width);
      expect(window.top - window.bottom).toBeLessThanOrEqual(page.height);
    }
  });
});
