import { type Point, type Ring, type Shape, transformShape } from '../geometry/index.ts';
import type { TileSpec } from '../job/Job.ts';
import type { Ticks } from '../measure/index.ts';

/** A whole tile in its own axes: its lower left corner at the origin, its length along x. */
export interface TileBox {
  readonly length: Ticks;
  readonly width: Ticks;
  /** Its own ring where it is no rectangle, convex. */
  readonly ring?: Ring;
}

/** A turn in the tile's plane, in degrees counter-clockwise. */
export type Turn = 0 | 90 | 180 | 270;

/** A piece in axes in which its whole tile is `box`. */
export interface OwnPiece {
  readonly box: TileBox;
  readonly shape: Shape;
  readonly circles: readonly { readonly name: string; readonly centre: Point; readonly radius: Ticks }[];
  /** Curves of walls along which it is cut. */
  readonly curves?: readonly { readonly centre: Point; readonly radius: Ticks }[];
  /** By how much it may end farther from all that cuts it; not at all unless told. */
  readonly loose?: Ticks;
}

/**
 * A point of a whole tile after the tile is turned and its lower left corner put back to the origin.
 *
 * @example turnPoint([10, 20], 180, { length: 100, width: 50 }) //=> [90, 30]
 * @example turnPoint([10, 20], 90, { length: 100, width: 100 }) //=> [80, 10]
 */
export function turnPoint([x, y]: Point, turn: Turn, box: TileBox): Point {
  if (turn === 90) return [box.width - y, x];
  if (turn === 180) return [box.length - x, box.width - y];
  if (turn === 270) return [y, box.length - x];
  return [x, y];
}

/**
 * Turns that bring a tile onto its own place and that it allows: quarter turns only where it is square, and of a tile that is no
 * rectangle only those after which it looks as before.
 *
 * @example turnsOf('any', { length: 100, width: 100 }) //=> [0, 90, 180, 270]
 * @example turnsOf('any', { length: 100, width: 50 }) //=> [0, 180]
 * @example turnsOf('none', { length: 100, width: 100 }) //=> [0]
 */
export function turnsOf(turns: TileSpec['turns'], box: TileBox): readonly Turn[] {
  if (turns === 'none') return [0];
  const fitting: readonly Turn[] = turns === 'any' && box.length === box.width ? [0, 90, 180, 270] : [0, 180];
  const { ring } = box;
  return ring ? fitting.filter((turn) => looksAlike(ring, turn, box)) : fitting;
}

/** What rounding does to the corners of a tile, in ticks. */
const ROUNDING = 2;

function looksAlike(ring: Ring, turn: Turn, box: TileBox): boolean {
  return ring.every((point) => {
    const [x, y] = turnPoint(point, turn, box);
    return ring.some(([u, v]) => Math.abs(u - x) <= ROUNDING && Math.abs(v - y) <= ROUNDING);
  });
}

/** A piece turned with its tile. */
export function turnPiece(piece: OwnPiece, turn: Turn): OwnPiece {
  if (turn === 0) return piece;
  const { length, width } = piece.box;
  const box = turn === 180 ? piece.box : { ...piece.box, length: width, width: length };
  return moved(piece, box, (point) => turnPoint(point, turn, piece.box));
}

/** A piece mirrored left to right in its tile. */
export function mirrorPiece(piece: OwnPiece): OwnPiece {
  return moved(piece, piece.box, ([x, y]) => [piece.box.length - x, y]);
}

/** A piece moved in its tile, which stays where it is: sawn from another place of it. */
export function slidePiece(piece: OwnPiece, [dx, dy]: Point): OwnPiece {
  const { box } = piece;
  return { ...moved(piece, { length: box.length, width: box.width }, ([x, y]) => [x + dx, y + dy]), box };
}

function moved(piece: OwnPiece, box: TileBox, move: (point: Point) => Point): OwnPiece {
  const { outer: ring } = transformShape({ outer: box.ring ?? [], holes: [] }, move);
  return {
    box: box.ring ? { ...box, ring } : box,
    shape: transformShape(piece.shape, move),
    circles: piece.circles.map((circle) => ({ ...circle, centre: move(circle.centre) })),
    ...(piece.loose && { loose: piece.loose }),
    ...(piece.curves && {
      curves: piece.curves.map((curve) => ({ ...curve, centre: move(curve.centre) })),
    }),
  };
}
