import { bounds, distanceShapes, intersect, type Point, type Shape, subtract } from '../geometry/index.ts';
import type { Layout, Piece } from '../layout/Layout.ts';
import { LAYING_REACH } from '../trade/index.ts';
import { farthestWalk } from './farthestWalk.ts';
import { openFloor } from './openFloor.ts';
import { isInReach, type Standing, standingOn } from './standingOn.ts';
import { tiledOver } from './tiledOver.ts';
import type { WayOut } from './wayOutOf.ts';

/** A zone as it is begun: the pieces of those before it, its own, and the first of them. */
export interface Begun {
  readonly laid: readonly Piece[];
  readonly pieces: readonly Piece[];
  readonly first: string;
}

/**
 * Where the first piece and all that is laid from one place beside it shut off a part of the zone from the way out: the piece of that part
 * that one has farthest to walk to, by name. Undefined where everything can still be laid afterwards.
 */
export function shutOff(layout: Layout, { laid, pieces, first }: Begun, wayOut: WayOut): string | undefined {
  const { open, beyond, out } = openFloor(layout, wayOut);
  const bareOver = (set: readonly Piece[]) =>
    subtract(open, subtract(tiledOver(layout, set), [{ outer: beyond, holes: [] }]));
  const start = pieces.find(({ id }) => id === first)!;
  const near = pieces.filter((piece) => distanceShapes(spotOf(piece), start.shape) <= LAYING_REACH.value);
  const before = standingOn(bareOver(laid), out);
  const after = standingOn(bareOver([...laid, ...near]), out);
  if (!before || !after) return undefined;
  const cutOff = after.others.filter((shape) => intersect([shape], [before.own]).length > 0);
  if (cutOff.length === 0) return undefined;
  const set = new Set(near);
  const lost = pieces.filter((piece) => !set.has(piece) && isLost(piece, after, cutOff));
  if (lost.length === 0) return undefined;
  const isLaid = new Set(laid);
  const over = layout.pieces.filter((piece) => !isLaid.has(piece));
  return farthestWalk({ from: wayOut.at, stands: before.own, over }, lost).id;
}

/** Whether a piece lies by a place that is cut off, and is laid from none that is not. */
function isLost({ shape }: Piece, standing: Standing, cutOff: readonly Shape[]): boolean {
  if (isInReach(shape, standing)) return false;
  const away = distanceShapes(shape, standing.own);
  return cutOff.some((other) => distanceShapes(shape, other) < away);
}

/** The middle of a piece as a shape of no width. */
function spotOf({ shape }: Piece): Shape {
  const { minX, minY, maxX, maxY } = bounds(shape.outer);
  const at: Point = [Math.round((minX + maxX) / 2), Math.round((minY + maxY) / 2)];
  return { outer: [at, at, at], holes: [] };
}
