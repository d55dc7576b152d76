import {
  bounds,
  distanceShapes,
  intersect,
  offsetShapes,
  type Point,
  pointInShape,
  type Shape,
  subtract,
} from '../geometry/index.ts';
import type { Layout, Piece } from '../layout/Layout.ts';
import { LAYING_REACH, PASSAGE } from '../trade/index.ts';
import { farthestWalk } from './farthestWalk.ts';
import { openFloor } from './openFloor.ts';
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

/** Where a person can stand: what he comes to from the way out, what he does not, and the floor that he reaches from there. */
interface Standing {
  readonly own: Shape;
  readonly others: readonly Shape[];
  readonly reached: readonly Shape[];
}

/** Nobody lays tile through what is narrower, such as a joint or the gap at a wall. */
const SLIT = PASSAGE.value / 12;

function standingOn(bare: readonly Shape[], out: Point): Standing | undefined {
  const half = PASSAGE.value / 2;
  const stands = offsetShapes(bare, -half);
  const own = stands.find((shape) => pointInShape(out, shape));
  if (!own) return undefined;
  const floor = offsetShapes(offsetShapes(bare, -SLIT / 2), SLIT / 2);
  const within = intersect(offsetShapes([own], half + LAYING_REACH.value), floor);
  const reached = within.filter((shape) => pointInShape(own.outer[0]!, shape));
  return { own, others: stands.filter((shape) => shape !== own), reached };
}

/** Whether a piece lies by a place that is cut off, and is laid from none that is not. */
function isLost({ shape }: Piece, { own, reached }: Standing, cutOff: readonly Shape[]): boolean {
  if (shape.outer.some((point) => reached.some((one) => pointInShape(point, one)))) return false;
  const away = distanceShapes(shape, own);
  return cutOff.some((other) => distanceShapes(shape, other) < away);
}

/** The middle of a piece as a shape of no width. */
function spotOf({ shape }: Piece): Shape {
  const { minX, minY, maxX, maxY } = bounds(shape.outer);
  const at: Point = [Math.round((minX + maxX) / 2), Math.round((minY + maxY) / 2)];
  return { outer: [at, at, at], holes: [] };
}
