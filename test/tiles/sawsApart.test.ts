import { describe, expect, test } from 'vitest';
import type { Ring } from '../../src/geometry/index.ts';
import { sawsApart } from '../../src/tiles/sawsApart.ts';

const box = (x: number, y: number, width: number, height: number): Ring => [
  [x, y],
  [x + width, y],
  [x + width, y + height],
  [x, y + height],
];

describe('whether straight cuts across the tile part its pieces', () => {
  test.each([
    ['one piece needs no parting', [box(0, 0, 9, 9)], true],
    ['two side by side, the kerf between', [box(0, 0, 9, 9), box(11, 0, 9, 9)], true],
    ['two a tick too near', [box(0, 0, 9, 9), box(10, 0, 9, 9)], false],
    ['two that overlap by less than the kerf', [box(0, 0, 9, 9), box(8, 0, 9, 9)], false],
    ['a strip, and two stacked beside it', [box(0, 0, 9, 20), box(11, 0, 9, 9), box(11, 11, 9, 9)], true],
    [
      'of the stacked two one reaches into the strip',
      [box(0, 0, 9, 20), box(11, 0, 9, 9), box(8, 11, 12, 9)],
      false,
    ],
    [
      'two triangles over a diagonal',
      [
        [
          [0, 0],
          [8, 0],
          [0, 8],
        ],
        [
          [20, 20],
          [2, 20],
          [20, 2],
        ],
      ],
      true,
    ],
    // Four round a fifth like the sails of a windmill: any line along one edge runs into another piece.
    [
      'a windmill of five',
      [box(0, 0, 20, 9), box(22, 0, 9, 20), box(11, 22, 20, 9), box(0, 11, 9, 20), box(11, 11, 9, 9)],
      false,
    ],
    [
      'the same five, one sail left out',
      [box(0, 0, 20, 9), box(22, 0, 9, 20), box(11, 22, 20, 9), box(11, 11, 9, 9)],
      true,
    ],
  ] as const)('%s', (_name, rings, parted) => {
    expect(sawsApart(rings, 2)).toBe(parted);
  });
});
