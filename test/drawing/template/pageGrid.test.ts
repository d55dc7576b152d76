import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { OVERLAP_MM, pageGrid, pagesFor } from '../../../src/drawing/template/pageGrid.ts';

const space = { widthMm: 174, heightMm: 199 };
const length = fc.double({ min: 20, max: 900, noNaN: true });

describe('windows of a region that is shown at full size', () => {
  test('fit a page, overlap their neighbours by 10 mm and cover the region', () => {
    fc.assert(
      fc.property(length, length, (right, top) => {
        const { columns, rows, windows, pages } = pageGrid({ left: 0, bottom: 0, right, top }, space);
        expect(pages).toHaveLength(pagesFor({ widthMm: right, heightMm: top }, space));
        for (const one of windows) {
          expect(one.right - one.left).toBeLessThanOrEqual(space.widthMm + 1e-6);
          expect(one.top - one.bottom).toBeLessThanOrEqual(space.heightMm + 1e-6);
        }
        const wide = windows.slice(0, columns);
        for (const [i, one] of wide.slice(1).entries())
          expect(wide[i]!.right - one.left).toBeCloseTo(OVERLAP_MM, 6);
        expect([wide[0]!.left, windows.at(-1)!.bottom]).toEqual([0, expect.closeTo(0, 6)]);
        expect([wide.at(-1)!.right, wide[0]!.top]).toEqual([expect.closeTo(right, 6), top]);
        expect(windows).toHaveLength(columns * rows);
      }),
      { seed: 4, numRuns: 200 },
    );
  });

  test('that show nothing take no page', () => {
    const region = { left: 0, bottom: 0, right: 300, top: 100 };
    expect(pageGrid(region, space, ({ left }) => left > 0).pages).toEqual([1]);
  });
});
