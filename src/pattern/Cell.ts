import type { Point } from '../geometry/index.ts';
import type { TileSpec } from '../job/Job.ts';

export type Sized = Pick<TileSpec, 'key' | 'length' | 'width'>;

/** The place of one tile in a repeat: a tile and one joint each way. Its longer side is that of the tile. */
export interface Cell {
  readonly tile: Sized;
  readonly at: Point;
  readonly size: Point;
}
