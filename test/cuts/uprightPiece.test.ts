import { describe, expect, test } from 'vitest';
import { mirrorPiece, type OwnPiece } from '../../src/cuts/TileBox.ts';
import { uprightPiece } from '../../src/cuts/uprightPiece.ts';
import type { Ring } from '../../src/geometry/index.ts';

// A diamond of 128325 by 45013 ticks whose right point a leaning wall takes off: it cuts as far up one side as down the other, at
// unlike distances across.
const box = { length: 128325, width: 45013 };
const diamond: Ring = [
  [64163, 0],
  [128325, 22507],
  [64163, 45013],
  [0, 22507],
];
const cut: OwnPiece = {
  box: { ...box, ring: diamond },
  shape: {
    outer: [
      [47480, 5852],
      [80855, 39158],
      [64163, 45013],
      [0, 22507],
    ],
    holes: [],
  },
  circles: [],
};

describe('a piece and its mirror image', () => {
  const [one, other] = [cut, mirrorPiece(cut)].map((piece) => uprightPiece(piece, 'any', 508));

  test('are two cuts, a left one and a right one, where their corners have the same sizes in other pairs', () => {
    expect(one!.key).not.toBe(other!.key);
    expect([one!.hand, other!.hand].sort()).toEqual(['left', 'right']);
  });

  test('are each the same cut when the tile is turned', () => {
    const half = {
      ...cut,
      shape: {
        outer: cut.shape.outer.map(([x, y]) => [box.length - x, box.width - y] as const),
        holes: [],
      },
    };
    expect(uprightPiece(half, 'any', 508).key).toBe(one!.key);
  });
});
