import { bounds, type Point, transformShape } from '../geometry/index.ts';
import type { Piece } from '../layout/Layout.ts';
import type { OwnPiece } from './TileBox.ts';

type Placed = Pick<Piece, 'fullTile' | 'quarter' | 'shape' | 'circles' | 'curves'>;

/**
 * A piece brought from the pattern's frame to its tile's own axes: quarter turns undone, the whole tile's lower left corner at
 * the origin. Whole ticks stay whole.
 *
 * @example ownPiece({ fullTile: [[100, 50], [104, 50], [104, 58], [100, 58]], quarter: 1, shape: { outer: [[100, 50], [104, 50], [104, 53], [100, 53]], holes: [] }, circles: [] }).shape.outer //=> [[0, 4], [0, 0], [3, 0], [3, 4]]
 */
export function ownPiece(piece: Placed): OwnPiece {
  const turned = piece.fullTile.map((point) => undo(point, piece.quarter));
  const box = bounds(turned);
  const own = (point: Point): Point => {
    const [x, y] = undo(point, piece.quarter);
    return [x - box.minX, y - box.minY];
  };
  return {
    box: { length: box.maxX - box.minX, width: box.maxY - box.minY },
    shape: transformShape(piece.shape, own),
    circles: piece.circles.map(({ name, centre, radius }) => ({ name, centre: own(centre), radius })),
    ...(piece.curves && {
      curves: piece.curves.map(({ centre, radius }) => ({ centre: own(centre), radius })),
    }),
  };
}

/** Turns a point back by quarter turns, without leaving whole ticks. */
function undo([x, y]: Point, quarter: Piece['quarter']): Point {
  if (quarter === 1) return [y, 0 - x];
  if (quarter === 2) return [0 - x, 0 - y];
  if (quarter === 3) return [0 - y, x];
  return [x, y];
}
