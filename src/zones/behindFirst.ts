import { bounds, lineThroughShape, type Point, type Shape } from '../geometry/index.ts';
import type { Layout, Piece } from '../layout/Layout.ts';
import { LAYING_REACH } from '../trade/index.ts';
import { bareOver } from './bareOver.ts';
import { farthestWalk } from './farthestWalk.ts';
import type { Leaving } from './openFloor.ts';
import type { Begun } from './shutOff.ts';
import { standingOn } from './standingOn.ts';
import { tiledOver } from './tiledOver.ts';

/**
 * Where a zone goes on behind its first piece, as seen from the way out, farther than a setter reaches over it: the piece of the zone that one
 * has farthest to walk to, by name. Who grew the floor from the first piece would be left behind it. Undefined where that lies at the far side.
 */
export function behindFirst(layout: Layout, begun: Begun, { wayOut, floor }: Leaving): string | undefined {
  const { laid, pieces, first: name } = begun;
  const first = pieces.find(({ id }) => id === name)!;
  const isLeft = (piece: Piece) => isBehind(piece, first, wayOut.at) && isInView(piece, first, floor.open);
  if (!pieces.some(isLeft)) return undefined;
  const standing = standingOn(bareOver(floor, tiledOver(layout, laid)), floor.out);
  if (!standing) return undefined;
  const isLaid = new Set(laid);
  const over = layout.pieces.filter((piece) => !isLaid.has(piece));
  const others = pieces.filter((piece) => piece !== first);
  return farthestWalk({ from: wayOut.at, stands: standing.own, over }, others).id;
}

/**
 * Whether a piece lies out of reach behind the first, in the quarter of a circle that is turned away from where one leaves by: what lies
 * farther round than that is beside it.
 */
function isBehind(piece: Piece, first: Piece, [x, y]: Point): boolean {
  const [[ownX, ownY], [firstX, firstY]] = [middleOf(piece), middleOf(first)];
  const [outX, outY] = [firstX - x, firstY - y];
  const long = Math.hypot(outX, outY);
  const behind = ([toX, toY]: Point) => (outX * (toX - firstX) + outY * (toY - firstY)) / long;
  const deep = behind([ownX, ownY]);
  if (deep < Math.SQRT1_2 * Math.hypot(ownX - firstX, ownY - firstY)) return false;
  return deep - Math.max(...first.shape.outer.map(behind)) > LAYING_REACH.value;
}

/** Whether nothing stands between two pieces: what lies round a corner or an obstacle is come to on another way. */
function isInView(piece: Piece, first: Piece, open: readonly Shape[]): boolean {
  const [from, to] = [middleOf(first), middleOf(piece)];
  return open
    .flatMap((shape) => lineThroughShape(shape, from, [to[0] - from[0], to[1] - from[1]]))
    .some((span) => span.from <= 0 && span.to >= 1);
}

function middleOf({ shape }: Piece): Point {
  const { minX, minY, maxX, maxY } = bounds(shape.outer);
  return [(minX + maxX) / 2, (minY + maxY) / 2];
}
