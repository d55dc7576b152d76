import { describe, expect, test } from 'vitest';
import { isNearFull } from '../../../src/layout/faults/limits.ts';
import type { Face } from '../../../src/layout/frame/Face.ts';
import type { LaidPiece } from '../../../src/layout/pieces/LaidPiece.ts';

type Ends = readonly [from: readonly [number, number], to: readonly [number, number]];
const level: Ends = [[0, 0], [90_000, 0]]; // biome-ignore format: a wall on a line
const upright: Ends = [[0, 0], [0, 90_000]]; // biome-ignore format: a wall on a line
const leaning: Ends = [[0, 0], [5_000, 90_000]]; // biome-ignore format: a wall on a line
const slanted: Ends = [[0, 0], [60_000, 60_000]]; // biome-ignore format: a wall on a line

/** Whether a piece of a tile of 60,000 by 50,000 ticks that such walls cut is nearly a whole tile. */
function nearFull(shares: readonly [number, number], walls: readonly Ends[]): boolean {
  const extent = [60_000 * shares[0], 50_000 * shares[1]] as const;
  const laid = { shares, extent, faces: walls.map((_, i) => i) } as unknown as LaidPiece;
  const faces = walls.map(([from, to]) => ({ from, to }) as unknown as Face);
  return isNearFull(laid, { faces });
}

describe('a cut that takes off less than a twentieth of a tile', () => {
  test('is nearly a whole tile, along or across', () => {
    expect(nearFull([0.97, 1], [upright])).toBe(true);
    expect(nearFull([1, 0.97], [level])).toBe(true);
  });

  test('is so in a corner too, where the other way little is left', () => {
    expect(nearFull([0.97, 0.3], [upright, level])).toBe(true);
  });

  test('is none where a point lacks it that no wall saws: the cap that a wall leaves of a hexagon', () => {
    expect(nearFull([0.956, 0.22], [level])).toBe(false);
    expect(nearFull([0.22, 0.956], [upright])).toBe(false);
  });

  test('is none where a slanted cut takes off more than a strip: a triangle, a plank with a pointed end', () => {
    expect(nearFull([0.97, 0.97], [slanted])).toBe(false);
    expect(nearFull([0.96, 1], [slanted])).toBe(false);
  });

  test('is one at a wall a little out of line', () => {
    expect(nearFull([0.97, 1], [leaning])).toBe(true);
  });

  test('is none where more is taken off, or nothing', () => {
    expect(nearFull([0.94, 1], [upright])).toBe(false);
    expect(nearFull([1, 1], [upright, level])).toBe(false);
  });
});
