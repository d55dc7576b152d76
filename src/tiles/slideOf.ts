import type { TileBox } from '../cuts/TileBox.ts';
import { type Point, rotateRound } from '../geometry/index.ts';
import type { CutTile } from './TilePlan.ts';
import { turnedBy } from './TileTurn.ts';

/** Turning a tile onto its own place moves it by no more than this, in ticks, where it lies between ticks. */
const ROUNDING = 4;

/**
 * How far a piece is moved along its tile from its own place, in the cut's axes: what is left of where a plan of tiles lays it once the tile is
 * turned back onto its own place, a turn that nobody sees. Ticks.
 *
 * @example slideOf({ at: [100, 0], turn: 0 }, { length: 600, width: 300 }) //=> [100, 0]
 * @example slideOf({ at: [600, 300], turn: 180 }, { length: 600, width: 300 }) //=> [0, 0]
 * @example slideOf({ at: [500, 300], turn: 180 }, { length: 600, width: 300 }) //=> [100, 0]
 */
export function slideOf({ at, turn }: Pick<CutTile['pieces'][number], 'at' | 'turn'>, box: TileBox): Point {
  const [x, y] = turnedBy(turn, box);
  const moved: Point = [at[0] - x, at[1] - y];
  if (Math.hypot(...moved) <= ROUNDING) return [0, 0];
  const [dx, dy] = rotateRound(moved, (-turn * Math.PI) / 180);
  return [dx + 0, dy + 0];
}
