import type { Point } from '../geometry/index.ts';
import { type TileSides, tileRing } from './cutFrame.ts';

type On = 'left' | 'right' | 'top' | 'bottom';

/**
 * The edge of a tile on one side of the box round it, as two points in the tile's own axes; undefined where only a point of the tile, or
 * the bow of a round one, touches the box.
 *
 * @example factorySide('left', { length: 600, width: 300 }) //=> [[0, 300], [0, 0]]
 * @example factorySide('left', { length: 80, width: 60, shape: { kind: 'rhombus' } }) //=> undefined
 */
export function factorySide(on: On, tile: TileSides): readonly [Point, Point] | undefined {
  if (tile.shape?.kind === 'round') return undefined;
  const ring = tileRing(tile);
  const [axis, at] = ({ left: [0, 0], right: [0, tile.length], bottom: [1, 0], top: [1, tile.width] } as const)[on]; // biome-ignore format: the four sides on a line
  return ring
    .map((from, i) => [from, ring[(i + 1) % ring.length]!] as const)
    .find(([from, to]) => from[axis] === at && to[axis] === at);
}
