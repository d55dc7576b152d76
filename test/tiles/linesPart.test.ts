import { describe, expect, test } from 'vitest';
import type { Ring } from '../../src/geometry/index.ts';
import { linesPart } from '../../src/tiles/linesPart.ts';
import { sawsApart } from '../../src/tiles/sawsApart.ts';
import { slideStops } from '../../src/tiles/slideStops.ts';

/** A right triangle with its legs along the axes: the corner where they meet, and how far each goes. */
const triangle = (x: number, y: number, along: number, up: number): Ring =>
  along * up > 0
    ? [[x, y], [x + along, y], [x, y + up]] // biome-ignore format: a ring on a line
    : [[x, y], [x, y + up], [x + along, y]]; // biome-ignore format: a ring on a line

const box = (x: number, y: number, width: number, height: number): Ring => [[x, y], [x + width, y], [x + width, y + height], [x, y + height]]; // biome-ignore format: a ring on a line

describe('straight cuts in any direction', () => {
  test('pass between the tips of two triangles where no cut along their sides does', () => {
    const tips = [triangle(0, 0, 50, 50), triangle(110, 0, -50, 50)];
    expect(sawsApart(tips, 10)).toBe(false);
    expect(linesPart(tips, 10)).toBe(true);
    expect(linesPart(tips, 11)).toBe(false);
  });

  test('do not get round a corner: of four that lie like the sails of a windmill none comes out first', () => {
    const sails = [box(0, 0, 20, 9), box(22, 0, 9, 20), box(11, 22, 20, 9), box(0, 11, 9, 20)];
    expect(linesPart(sails, 2)).toBe(false);
    expect(linesPart(sails.slice(1), 2)).toBe(true);
  });
});

describe('a piece that slides', () => {
  test('is too near from where its tip is to where its slanting side is', () => {
    // 3, 4, 5: the tip stands 3 over the corner. The side slants at 45 degrees.
    const slanting: Ring = [[0, 3], [0, 9], [-6, 9]]; // biome-ignore format: a ring on a line
    const [from, to] = slideStops(slanting, [1, 0], box(40, -5, 10, 5), 5)!;
    expect(from).toBeCloseTo(36, 9);
    expect(to).toBeCloseTo(47 + 5 * Math.SQRT2, 9);
  });
});
