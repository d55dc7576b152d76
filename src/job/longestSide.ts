import type { Ticks } from '../measure/index.ts';
import { chipSides } from './chipSides.ts';
import type { TileSpec } from './Job.ts';

/**
 * The longest side that lies flat, of several tiles: a tile's, of a sheet of mosaic a chip's; in ticks, 0 of none.
 *
 * @example
 * longestSide([{ length: 600, width: 300 }, { length: 200, width: 400 }], 10) //=> 600
 * longestSide([{ length: 190, width: 90, chips: [10, 5] }], 10) //=> 10
 */
export function longestSide(
  tiles: readonly Pick<TileSpec, 'length' | 'width' | 'chips' | 'chip'>[],
  joint: Ticks,
): Ticks {
  const sides = tiles.map((tile) => chipSides(tile, joint));
  return Math.max(0, ...sides.flatMap(({ length, width }) => [length, width]));
}
