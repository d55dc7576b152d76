import { type TileBox, type Turn, turnPoint } from '../cuts/TileBox.ts';
import type { Point } from '../geometry/index.ts';
import type { TileSpec } from '../job/Job.ts';

/** A turn of a piece in its tile's plane, in degrees counter-clockwise: by sixths in a hexagon, by eighths in an octagon. */
export type TileTurn = Turn | 45 | 60 | 120 | 135 | 225 | 240 | 300 | 315;

const ALL: readonly TileTurn[] = [0, 45, 60, 90, 120, 135, 180, 225, 240, 270, 300, 315];

/** What rounding does to the corners of a tile, in ticks. */
const ROUNDING = 2;

/**
 * Turns after which a piece still lies in its tile with factory edges at its joints: those that bring the tile onto its own place
 * and that it allows.
 *
 * @example tileTurns('any', { length: 100, width: 100 }) //=> [0, 90, 180, 270]
 * @example tileTurns('half', { length: 100, width: 100 }) //=> [0, 180]
 * @example tileTurns('none', { length: 100, width: 50 }) //=> [0]
 */
export function tileTurns(turns: TileSpec['turns'], box: TileBox): readonly TileTurn[] {
  const allowed = ALL.filter((turn) => turn === 0 || turns === 'any' || (turns === 'half' && turn === 180));
  return allowed.filter((turn) => looksAlike(turn, box));
}

function looksAlike(turn: TileTurn, box: TileBox): boolean {
  const { length, width, ring } = box;
  if (!ring) return turn % 180 === 0 || (turn % 90 === 0 && length === width);
  return ring.every((point) => {
    const [x, y] = turnInTile(point, turn, box);
    return ring.some(([u, v]) => Math.abs(u - x) <= ROUNDING && Math.abs(v - y) <= ROUNDING);
  });
}

/**
 * A point of a tile after the tile is turned onto its own place: a quarter turn is exact; any other is about the tile's middle and
 * lies between ticks.
 *
 * @example turnInTile([10, 20], 180, { length: 100, width: 50 }) //=> [90, 30]
 */
export function turnInTile(point: Point, turn: TileTurn, box: TileBox): Point {
  if (turn % 90 === 0) return turnPoint(point, turn as Turn, box);
  const [x, y] = turned(point, turn);
  const [dx, dy] = turnedBy(turn, box);
  return [x + dx, y + dy];
}

/**
 * Where the origin of a tile's axes comes to lie, in whole ticks: turn about the origin, then move by this.
 *
 * @example turnedBy(180, { length: 100, width: 50 }) //=> [100, 50]
 */
export function turnedBy(turn: TileTurn, box: TileBox): Point {
  if (turn % 90 === 0) return turnPoint([0, 0], turn as Turn, box);
  const middle: Point = [box.length / 2, box.width / 2];
  const [x, y] = turned(middle, turn);
  return [Math.round(middle[0] - x), Math.round(middle[1] - y)];
}

function turned([x, y]: Point, turn: TileTurn): Point {
  const [cos, sin] = [Math.cos((turn * Math.PI) / 180), Math.sin((turn * Math.PI) / 180)];
  return [x * cos - y * sin, x * sin + y * cos];
}
