import type { Point } from '../geometry/index.ts';

/** A side of a whole tile in its own axes. */
export type TileSide = 'left' | 'right' | 'top' | 'bottom';

/** One edge of a piece: on a side of its tile (factory), sawn, or part of a circle. Walked with the piece on the left. */
export interface OutlineEdge {
  readonly from: Point;
  readonly to: Point;
  readonly what: 'factory' | 'sawn' | 'arc';
  /** Side of the tile on which a factory edge lies. */
  readonly on?: TileSide;
  /** Middle of a sawn edge that follows a curved wall. */
  readonly via?: Point;
  /** Index of the circle of an arc. */
  readonly circle?: number;
}
