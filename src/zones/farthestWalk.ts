import { type Box, bounds, distanceShapes, type Point } from '../geometry/index.ts';
import type { Piece } from '../layout/Layout.ts';
import { PASSAGE } from '../trade/index.ts';

/** Pieces that are no farther apart lie side by side, with a joint between them. */
const BESIDE = PASSAGE.value / 12;

/** Of some pieces the one to which the way is longest, from the piece nearest to a place, and from each that one walks on to its neighbours. */
export function farthestWalk(from: Point, walkedOn: readonly Piece[], some: readonly Piece[]): Piece {
  const wayTo = walks(from, nodesOf([...new Set([...walkedOn, ...some])]));
  return some.reduce((best, next) => ((wayTo.get(next) ?? 0) > (wayTo.get(best) ?? 0) ? next : best));
}

/** How far it is to each piece that one comes to, in ticks, from middle to middle. */
function walks(from: Point, nodes: readonly Node[]): ReadonlyMap<Piece, number> {
  const besideOf = neighbours(nodes);
  const isNearer = (one: Node, other: Node) => distanceTo(one, from) < distanceTo(other, from);
  const start = nodes.reduce((best, next) => (isNearer(next, best) ? next : best));
  const walked = new Map([[start, 0]]);
  const queue = [start];
  for (const node of queue)
    for (const next of besideOf.get(node) ?? []) {
      const way = walked.get(node)! + distanceTo(node, next.middle);
      if (way >= (walked.get(next) ?? Number.POSITIVE_INFINITY)) continue;
      walked.set(next, way);
      queue.push(next);
    }
  return new Map([...walked].map(([{ piece }, way]) => [piece, way]));
}

function distanceTo({ middle: [x, y] }: Node, to: Point): number {
  return Math.hypot(x - to[0], y - to[1]);
}

function nodesOf(pieces: readonly Piece[]): readonly Node[] {
  return pieces.map((piece) => {
    const box = bounds(piece.shape.outer);
    return { piece, box, middle: [(box.minX + box.maxX) / 2, (box.minY + box.maxY) / 2] };
  });
}

interface Node {
  readonly piece: Piece;
  readonly box: Box;
  readonly middle: Point;
}

function neighbours(nodes: readonly Node[]): ReadonlyMap<Node, readonly Node[]> {
  const inOrder = [...nodes].sort((a, b) => a.box.minX - b.box.minX);
  const beside = new Map<Node, Node[]>(nodes.map((node) => [node, []]));
  inOrder.forEach((node, i) => {
    for (let j = i + 1; j < inOrder.length && inOrder[j]!.box.minX <= node.box.maxX + BESIDE; j += 1) {
      const other = inOrder[j]!;
      if (other.box.minY > node.box.maxY + BESIDE || node.box.minY > other.box.maxY + BESIDE) continue;
      if (distanceShapes(node.piece.shape, other.piece.shape) > BESIDE) continue;
      beside.get(node)!.push(other);
      beside.get(other)!.push(node);
    }
  });
  return beside;
}
