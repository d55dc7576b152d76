import { bounds, type Point, type Ring, rotateRound, transformShape } from '../geometry/index.ts';
import type { Piece } from '../layout/Layout.ts';
import type { Ticks } from '../measure/index.ts';
import type { OwnPiece, TileBox } from './TileBox.ts';

type Placed = Pick<Piece, 'fullTile' | 'quarter' | 'slantDeg' | 'shape' | 'circles' | 'curves'>;

/**
 * A piece brought from the pattern's frame to its tile's own axes: its turn undone, the whole tile's lower left corner at
 * the origin. Whole ticks stay whole; where the tile lies aslant, they are rounded.
 *
 * @param loose by how much it may end farther from all that cuts it.
 * @example ownPiece({ fullTile: [[100, 50], [104, 50], [104, 58], [100, 58]], quarter: 1, shape: { outer: [[100, 50], [104, 50], [104, 53], [100, 53]], holes: [] }, circles: [] }).shape.outer //=> [[0, 4], [0, 0], [3, 0], [3, 4]]
 */
export function ownPiece(piece: Placed, loose: Ticks = 0): OwnPiece {
  const turned = piece.fullTile.map((point) => undo(point, piece));
  const box = bounds(turned);
  const put = ([x, y]: Point): Point => [x - box.minX, y - box.minY];
  const own = (point: Point): Point => put(undo(point, piece));
  return {
    box: boxOf(turned.map(put)),
    shape: transformShape(piece.shape, own),
    circles: piece.circles.map(({ name, centre, radius }) => ({ name, centre: own(centre), radius })),
    ...(loose > 0 && { loose }),
    ...(piece.curves && {
      curves: piece.curves.map(({ centre, radius }) => ({ centre: own(centre), radius })),
    }),
  };
}

/** What rounding does to the corners of a tile that lies aslant, in ticks. */
const ROUNDING = 2;

/** The tile's box; with its ring where that is not the box itself. */
function boxOf(ring: Ring): TileBox {
  const { maxX: length, maxY: width } = bounds(ring);
  const near = (value: number, most: number) => value <= ROUNDING || value >= most - ROUNDING;
  const isBox = ring.length === 4 && ring.every(([x, y]) => near(x, length) && near(y, width));
  return isBox ? { length, width } : { length, width, ring };
}

/** Turns a point back by quarter turns, without leaving whole ticks, and where the tile lies aslant by the rest. */
function undo(point: Point, { quarter, slantDeg }: Placed): Point {
  const [x, y] = slantDeg ? rotateRound(point, (-slantDeg * Math.PI) / 180) : point;
  if (quarter === 1) return [y, 0 - x];
  if (quarter === 2) return [0 - x, 0 - y];
  if (quarter === 3) return [0 - y, x];
  return [x, y];
}
