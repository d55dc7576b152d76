import { type Box, bounds, distanceShapes, intersect, type Point, type Shape } from '../geometry/index.ts';
import type { Piece } from '../layout/Layout.ts';
import { PASSAGE } from '../trade/index.ts';

/** Parts of the floor that are no farther apart lie side by side, with a joint between them. */
const BESIDE = PASSAGE.value / 12;

/** A floor as one walks on it: where one comes in, the places to stand that are reached from there, and the pieces that they are told by. */
export interface Walk {
  readonly from: Point;
  readonly stands: Shape;
  readonly over: readonly Piece[];
}

/** Of some pieces the one to which the way is longest: from place to place to stand, each as large as a piece, and from the nearest to the piece. */
export function farthestWalk({ from, stands, over }: Walk, some: readonly Piece[]): Piece {
  const walked = walks(from, over.flatMap((piece) => nodesOf(piece, stands))); // biome-ignore format: one call
  const ways = some.map((piece) => ({ piece, way: wayTo(piece, walked) }));
  return ways.reduce((best, next) => (next.way > best.way ? next : best)).piece;
}

/** A place to stand, all on one piece: a piece over a narrow gap has one on each side of it. */
interface Node {
  readonly stand: Shape;
  readonly box: Box;
  readonly middle: Point;
}

function nodeOf(stand: Shape): Node {
  const box = bounds(stand.outer);
  return { stand, box, middle: [(box.minX + box.maxX) / 2, (box.minY + box.maxY) / 2] };
}

function nodesOf({ shape }: Piece, stands: Shape): readonly Node[] {
  return intersect([shape], [stands]).map(nodeOf);
}

/** How far it is to each place that one comes to, in ticks, from middle to middle. */
function walks(from: Point, nodes: readonly Node[]): ReadonlyMap<Node, number> {
  const besideOf = neighbours(nodes);
  const start = nodes.reduce((best, next) => (away(next, from) < away(best, from) ? next : best));
  const walked = new Map([[start, 0]]);
  const queue = [start];
  for (const node of queue)
    for (const next of besideOf.get(node) ?? []) {
      const way = walked.get(node)! + away(node, next.middle);
      if (way >= (walked.get(next) ?? Number.POSITIVE_INFINITY)) continue;
      walked.set(next, way);
      queue.push(next);
    }
  return walked;
}

/** The way to a piece over the place to stand that is nearest to it. */
function wayTo({ shape }: Piece, walked: ReadonlyMap<Node, number>): number {
  const { box, middle } = nodeOf(shape);
  let best = { off: Number.POSITIVE_INFINITY, way: 0 };
  for (const [node, way] of walked) {
    if (!isNear(box, node.box, best.off)) continue;
    const off = distanceShapes(shape, node.stand);
    const long = way + away(node, middle);
    if (off < best.off || (off === best.off && long < best.way)) best = { off, way: long };
  }
  return best.way;
}

function away({ middle: [x, y] }: Node, to: Point): number {
  return Math.hypot(x - to[0], y - to[1]);
}

function neighbours(nodes: readonly Node[]): ReadonlyMap<Node, readonly Node[]> {
  const inOrder = [...nodes].sort((a, b) => a.box.minX - b.box.minX);
  const beside = new Map<Node, Node[]>(nodes.map((node) => [node, []]));
  inOrder.forEach((node, i) => {
    for (let j = i + 1; j < inOrder.length && inOrder[j]!.box.minX <= node.box.maxX + BESIDE; j += 1) {
      const other = inOrder[j]!;
      if (!isNear(node.box, other.box, BESIDE)) continue;
      if (distanceShapes(node.stand, other.stand) > BESIDE) continue;
      beside.get(node)!.push(other);
      beside.get(other)!.push(node);
    }
  });
  return beside;
}

function isNear(a: Box, b: Box, off: number): boolean {
  return a.minX - b.maxX <= off && b.minX - a.maxX <= off && a.minY - b.maxY <= off && b.minY - a.maxY <= off;
}
