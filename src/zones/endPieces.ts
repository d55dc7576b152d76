import { bounds, distancePointSegment, type Point } from '../geometry/index.ts';
import type { Layout, Piece } from '../layout/Layout.ts';
import { firstOfWork } from './firstOfWork.ts';
import type { WayOut } from './wayOutOf.ts';

/**
 * The first piece to set, at the chalk crossing or nearest to it, and the last, nearest to the way out, or
 * farthest from the first. Zones are numbered from 1.
 */
export function endPieces(
  layout: Layout,
  pieces: readonly Piece[],
  number: number,
  wayOut: WayOut | undefined,
): { readonly first: string; readonly last: string } {
  const { crossing, firstPiece } = layout.chalk;
  const whole = pieces.filter((piece) => piece.whole);
  const wanted = number === 1 ? firstOfWork(layout, pieces).firstPiece : firstPiece;
  const first =
    pieces.find(({ id }) => id === wanted) ??
    nearest(whole.length > 0 ? whole : pieces, (piece) => distance(middleOf(piece), crossing));
  const last = wayOut
    ? nearest(pieces, (piece) => reachOf(piece, wayOut.at) + SLIGHT * distance(middleOf(piece), wayOut.at))
    : nearest(pieces, (piece) => -distance(middleOf(piece), middleOf(first)));
  return { first: first.id, last: last.id };
}

/** Of pieces that reach as near to the way out the one that lies nearest with its middle. */
const SLIGHT = 1e-3;

/** How near a piece comes to a spot: what lies in a doorway is nearer to it than what lies before it. */
function reachOf({ shape }: Piece, at: Point): number {
  const { outer } = shape;
  return Math.min(...outer.map((from, i) => distancePointSegment(at, from, outer[(i + 1) % outer.length]!)));
}

function nearest(pieces: readonly Piece[], away: (piece: Piece) => number): Piece {
  return pieces.reduce((best, next) => (away(next) < away(best) ? next : best));
}

function middleOf({ shape }: Piece): Point {
  const box = bounds(shape.outer);
  return [(box.minX + box.maxX) / 2, (box.minY + box.maxY) / 2];
}

function distance(a: Point, b: Point): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1]);
}
