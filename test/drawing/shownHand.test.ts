import { describe, expect, test } from 'vitest';
import type { Cut } from '../../src/cuts/Cut.ts';
import { tileRing, wallDownTurn } from '../../src/drawing/cutFrame.ts';
import { direction } from '../../src/drawing/Scale.ts';
import { shownHand } from '../../src/drawing/shownHand.ts';
import { bounds, type Ring, shapeArea, subtract } from '../../src/geometry/index.ts';
import { demos } from '../sheets/demos.ts';

/** The part of a ring left of the middle of all of it. */
function leftArea(ring: Ring, middle: number): number {
  const { minY, maxY, minX } = bounds(ring);
  const right: Ring = [[middle, minY - 1], [1e9, minY - 1], [1e9, maxY + 1], [middle, maxY + 1]]; // biome-ignore format: a ring on a line
  return minX >= middle
    ? 0
    : subtract([{ outer: ring, holes: [] }], [{ outer: right, holes: [] }]).reduce(
        (sum, shape) => sum + shapeArea(shape),
        0,
      );
}

/** How much of its tile a cut leaves on either side of the middle, as its card shows it. */
function keptBySide(cut: Cut, tile: Ring): { readonly left: number; readonly right: number } {
  const [cos, sin] = direction(wallDownTurn(cut));
  const turned = (ring: Ring): Ring =>
    ring.map(([x, y]) => [Math.round(x * cos - y * sin), Math.round(x * sin + y * cos)] as const);
  const { minX, maxX } = bounds(turned(tile));
  const left = leftArea(turned(cut.shape.outer), (minX + maxX) / 2);
  return { left, right: shapeArea({ outer: cut.shape.outer, holes: [] }) - left };
}

const handed = demos.flatMap(({ slug, packet }) =>
  packet.surfaces.flatMap(({ cuts }) =>
    cuts
      .filter(({ hand, kind, circles }) => hand !== 'none' && kind === 'notch' && circles.length === 0)
      .map((cut) => ({ slug, cut, tile: packet.spec.tiles.find(({ key }) => key === cut.tile)! })),
  ),
);

describe('the hand of a notch', () => {
  test.each(handed)(
    'is the side of its card on which less is left: $slug cut $cut.number',
    ({ cut, tile }) => {
      const { left, right } = keptBySide(cut, tileRing(tile));
      expect(shownHand(cut, tile)).toBe(left < right ? 'left' : 'right');
    },
  );

  test('is asked of some that lie turned on their cards', () => {
    expect(handed.some(({ cut, tile }) => shownHand(cut, tile) !== cut.hand)).toBe(true);
  });
});
