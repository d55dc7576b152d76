import { bounds, distanceShapes, intersect, type Point, type Shape } from '../geometry/index.ts';
import type { Layout, Piece } from '../layout/Layout.ts';
import { LAYING_REACH } from '../trade/index.ts';
import { bareOver } from './bareOver.ts';
import { farthestWalk } from './farthestWalk.ts';
import type { Leaving } from './openFloor.ts';
import { isInReach, type Standing, standingOn } from './standingOn.ts';
import { tiledOver } from './tiledOver.ts';

/** A zone as it is begun: the pieces of those before it, its own, the first of them, and that nearest to the way out. */
export interface Begun {
  readonly laid: readonly Piece[];
  readonly pieces: readonly Piece[];
  readonly first: string;
  readonly last: string;
}

/**
 * Where the first piece and all that is laid from one place beside it shut off a part of the zone from the way out: the piece of that part
 * that one has farthest to walk to, by name; that of the whole zone where the first piece is the last before the way out. Undefined where
 * everything can still be laid afterwards.
 */
export function shutOff(layout: Layout, begun: Begun, { wayOut, floor }: Leaving): string | undefined {
  const { laid, pieces, first, last } = begun;
  const standingOver = (set: readonly Piece[]) =>
    standingOn(bareOver(floor, tiledOver(layout, set)), floor.out);
  const before = standingOver(laid);
  if (!before) return undefined;
  const lostNear = (near: readonly Piece[]) =>
    lostPieces(begun, near, { before, after: standingOver([...laid, ...near]) });
  const lost = first === last ? pieces.filter(({ id }) => id !== first) : lostNear(besideFirst(begun));
  if (lost.length === 0) return undefined;
  const isLaid = new Set(laid);
  const over = layout.pieces.filter((piece) => !isLaid.has(piece));
  return farthestWalk({ from: wayOut.at, stands: before.own, over }, lost).id;
}

/** What is laid from one place beside the first piece. */
function besideFirst({ pieces, first }: Begun): readonly Piece[] {
  const start = pieces.find(({ id }) => id === first)!;
  return pieces.filter((piece) => distanceShapes(spotOf(piece), start.shape) <= LAYING_REACH.value);
}

/** The pieces that nobody lays any more once those near the first lie. */
function lostPieces(
  { pieces }: Begun,
  near: readonly Piece[],
  { before, after }: { readonly before: Standing; readonly after: Standing | undefined },
): readonly Piece[] {
  const cutOff = after?.others.filter((shape) => intersect([shape], [before.own]).length > 0) ?? [];
  if (!after || cutOff.length === 0) return [];
  const set = new Set(near);
  return pieces.filter((piece) => !set.has(piece) && isLost(piece, after, cutOff));
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
