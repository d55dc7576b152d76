import type { Point, Shape } from '../../src/geometry/index.ts';
import { boxOf, type Judged, ringsOf } from './Judged.ts';

/** Rounding of corners may bring two pieces nearer by this many ticks. */
const ALLOWED = 2;

/**
 * Whether any two pieces lie nearer together than the joint, or on two sides of a wide one than that is. Says which; empty when none do. Two pieces of one
 * tile are not asked: what stands between them parts them.
 */
export function judgeDistance({ pieces, joint, wide = [] }: Judged): string[] {
  const boxes = pieces.map(({ shape }) => boxOf(shape.outer));
  const sides = boxes.map((box) =>
    wide.map(({ axis, at }) => (axis === 0 ? box.minX + box.maxX : box.minY + box.maxY) > 2 * at),
  );
  const wanted = (i: number, j: number) =>
    Math.max(joint, ...wide.map(({ width }, line) => (sides[i]![line] === sides[j]![line] ? 0 : width)));
  const most = Math.max(joint, ...wide.map(({ width }) => width));
  const order = pieces.map((_, i) => i).sort((i, j) => boxes[i]!.minX - boxes[j]!.minX);
  const wrong: string[] = [];
  order.forEach((i, at) => {
    for (let next = at + 1; next < order.length; next++) {
      const j = order[next]!;
      if (boxes[j]!.minX - boxes[i]!.maxX > most) break;
      if (boxes[j]!.minY - boxes[i]!.maxY > most || boxes[i]!.minY - boxes[j]!.maxY > most) continue;
      if (`${pieces[i]!.fullTile[0]}` === `${pieces[j]!.fullTile[0]}`) continue;
      const apart = between(pieces[i]!.shape, pieces[j]!.shape);
      const least = wanted(i, j);
      if (apart < least - ALLOWED) wrong.push(`${pieces[i]!.id} and ${pieces[j]!.id}: ${apart} of ${least}`);
    }
  });
  return wrong;
}

/** Least distance between the edges of two shapes: at the least, a corner of one to an edge of the other. */
function between(one: Shape, other: Shape): number {
  return Math.min(cornersTo(one, other), cornersTo(other, one));
}

function cornersTo(one: Shape, other: Shape): number {
  let least = Infinity;
  for (const ring of ringsOf(other)) {
    ring.forEach((p, i) => {
      const q = ring[(i + 1) % ring.length]!;
      for (const corner of ringsOf(one).flat()) least = Math.min(least, toSegment(corner, p, q));
    });
  }
  return least;
}

function toSegment([x, y]: Point, [px, py]: Point, [qx, qy]: Point): number {
  const [dx, dy] = [qx - px, qy - py];
  const part = Math.min(1, Math.max(0, ((x - px) * dx + (y - py) * dy) / (dx * dx + dy * dy)));
  return Math.hypot(x - px - part * dx, y - py - part * dy);
}
