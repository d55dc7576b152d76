import type { TileBox } from '../cuts/TileBox.ts';
import type { Ring } from '../geometry/index.ts';

/**
 * The outline of a whole tile in its own axes.
 *
 * @example ringOfBox({ length: 4, width: 2 }) //=> [[0, 0], [4, 0], [4, 2], [0, 2]]
 */
export function ringOfBox({ length, width, ring }: TileBox): Ring {
  return ring ?? [[0, 0], [length, 0], [length, width], [0, width]]; // biome-ignore format: a ring on a line
}
