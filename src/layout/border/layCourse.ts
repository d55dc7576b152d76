import { bounds, type Point, rotate, unitAlong } from '../../geometry/index.ts';
import type { TileSpec } from '../../job/Job.ts';
import type { Ticks } from '../../measure/index.ts';
import type { Ground } from '../frame/Ground.ts';
import type { LaidPiece, LeftPart } from '../pieces/LaidPiece.ts';
import { layStrip, type StripTile } from './layStrip.ts';
import { inTicks } from './offsetLine.ts';

/** A line that tiles are laid along, one after another: their inner edges stand on it, `from` to `to`, the tile on its right. */
export interface StripLine {
  readonly from: Point;
  readonly to: Point;
  /** How far tile of the strip reaches along the line, from `from`, at the least and at the most. */
  readonly reach: readonly [Ticks, Ticks];
  /** Where the strip begins and ends half way through its depth, from `from`: its middle is between them. */
  readonly span: readonly [Ticks, Ticks];
  /** Rows of tiles, the first on the line. */
  readonly rows: number;
}

/** Pieces of a strip; extents and shares are those along the tile's own sides. */
export interface LaidStrip {
  readonly ground: Ground;
  readonly pieces: readonly LaidPiece[];
  readonly left: readonly LeftPart[];
  /** Direction of the tile's length in the pattern's frame, in radians. */
  readonly turn: number;
}

/** What one end piece is longer by than another has to be more than rounding. */
const SAME: Ticks = 4;
/** A tile ends at most so far before a strip does and still reaches it: corners of both are rounded, in a turned room twice. */
const REACHES: Ticks = 12;

/** Lays tiles along a line with a tile or a joint on its middle, whichever leaves the larger end piece. */
export function layCourse(
  ground: Ground,
  line: StripLine,
  tile: Pick<TileSpec, 'length' | 'width'>,
  joint: Ticks,
): LaidStrip {
  const middle = Math.round((line.span[0] + line.span[1]) / 2);
  const starts = [middle - Math.round(tile.length / 2), middle + Math.floor((joint + 1) / 2)];
  const [onTile, onJoint] = starts.map((start) => laidFrom(ground, line, tile, joint, start));
  const [one, other] = [leastOf(onTile!, line), leastOf(onJoint!, line)];
  if (Math.abs(one - other) > SAME) return one > other ? onTile! : onJoint!;
  return onJoint!.pieces.length < onTile!.pieces.length ? onJoint! : onTile!;
}

/** Lays tiles along a line, one of them from there on. */
export function laidFrom(
  ground: Ground,
  line: StripLine,
  tile: Pick<TileSpec, 'length' | 'width'>,
  joint: Ticks,
  start: Ticks,
): LaidStrip {
  const [u, v] = unitAlong(line.from, line.to);
  const turn = Math.atan2(v, u);
  const laid = layStrip(ground, stripTiles(line, tile, joint, start), joint);
  return { ...laid, turn, ground, pieces: laid.pieces.map((piece) => inOwnAxes(piece, turn, tile)) };
}

/** The tiles that the strip may need, each where it stands. */
function stripTiles(
  { from, to, reach, rows }: StripLine,
  { length, width }: Pick<TileSpec, 'length' | 'width'>,
  joint: Ticks,
  start: Ticks,
): StripTile[] {
  const [ux, uy] = unitAlong(from, to);
  const module = length + joint;
  const [first, last] = [
    Math.floor((reach[0] - start - length) / module),
    Math.ceil((reach[1] - start) / module),
  ];
  const at = (s: number, off: number): Point =>
    inTicks([from[0] + ux * s + uy * off, from[1] + uy * s - ux * off]);
  return Array.from({ length: rows }, (_, j) => j).flatMap((j) =>
    Array.from({ length: last - first + 1 }, (_, n): StripTile => {
      const [begin, near] = [start + (first + n) * module, j * (width + joint)];
      const [end, far] = [begin + length, near + width];
      const ring = [at(begin, far), at(end, far), at(end, near), at(begin, near)];
      return { place: { k: 0, i: first + n, j }, ring };
    }),
  );
}

/** Smallest length of a piece along the strip; none where a joint falls on an end, so that no tile reaches it. */
export function leastOf({ pieces }: Pick<LaidStrip, 'pieces'>, { from, to, reach }: StripLine): Ticks {
  const [ux, uy] = unitAlong(from, to);
  const places = pieces.flatMap(({ shape }) =>
    shape.outer.map(([x, y]) => (x - from[0]) * ux + (y - from[1]) * uy),
  );
  const short = Math.max(Math.min(...places) - reach[0], reach[1] - Math.max(...places));
  return short > REACHES ? 0 : Math.min(...pieces.map(({ extent }) => extent[0]));
}

/** A strip may lie aslant in the frame: what is judged of its pieces is measured along its own tiles. */
function inOwnAxes(
  piece: LaidPiece,
  turn: number,
  { length, width }: Pick<TileSpec, 'length' | 'width'>,
): LaidPiece {
  if (piece.whole) return { ...piece, extent: [length, width] };
  const box = bounds(piece.shape.outer.map((point) => rotate(point, -turn)));
  const extent = [Math.round(box.maxX - box.minX), Math.round(box.maxY - box.minY)] as const;
  return { ...piece, extent, shares: [Math.min(1, extent[0] / length), Math.min(1, extent[1] / width)] };
}
