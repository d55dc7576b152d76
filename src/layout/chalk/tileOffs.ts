import { bounds, type Point } from '../../geometry/index.ts';
import type { Piece } from '../Layout.ts';

/** How a piece's tile lies to the crossing, in ticks. */
export interface TileOffs {
  readonly id: string;
  /** A whole tile of the field: none of a border or an inlay, which have places of their own. */
  readonly whole: boolean;
  /** Its low corner where it lies along the axes of its pattern. */
  readonly corner: Point | undefined;
  /** Whether it lies beyond both lines, over the level one and right of the upright one. */
  readonly isBeyond: boolean;
  /** How far its nearer side stands off the upright line and the level one; under 0 where the tile lies across it. */
  readonly off: readonly [number, number];
}

/** How each piece's tile lies to the two lines that meet at the crossing. */
export function tileOffs(crossing: Point, pieces: readonly Piece[]): readonly TileOffs[] {
  return pieces.map(({ id, whole, fullTile, quarter, border }) => {
    const { minX, minY, maxX, maxY } = bounds(fullTile);
    return {
      id,
      whole: whole && !border,
      corner: quarter === 0 ? [minX, minY] : undefined,
      isBeyond: minX >= crossing[0] && minY >= crossing[1],
      off: [
        Math.max(minX - crossing[0], crossing[0] - maxX),
        Math.max(minY - crossing[1], crossing[1] - maxY),
      ],
    };
  });
}

/** The tile that stands nearest to both lines. */
export function nearestOff(tiles: readonly TileOffs[]): TileOffs {
  return tiles.reduce((best, one) => (Math.hypot(...one.off) < Math.hypot(...best.off) ? one : best));
}
