import type { Point } from './Point.ts';
import type { Ring } from './Ring.ts';
import type { Shape } from './Shape.ts';
import { side } from './side.ts';

/** A piece of the line p + t · dir, from one t to another. */
export interface Span {
  readonly from: number;
  readonly to: number;
}

/**
 * The longest pieces of a line that lie in a shape or along its edge, as values of t in p + t · dir, in
 * order. A line that only touches a corner has none there.
 *
 * @example lineThroughShape({outer: [[0, 0], [9, 0], [9, 4], [0, 4]], holes: [[[2, 1], [2, 3], [5, 3], [5, 1]]]}, [0, 2], [1, 0]) //=> [{from: 0, to: 2}, {from: 5, to: 9}]
 * @example lineThroughShape({outer: [[0, 0], [9, 0], [9, 4], [0, 4]], holes: []}, [0, 4], [1, 0]) //=> [{from: 0, to: 9}]
 */
export function lineThroughShape(shape: Shape, p: Point, dir: Point): Span[] {
  const q: Point = [p[0] + dir[0], p[1] + dir[1]];
  const rings = [shape.outer, ...shape.holes];
  // A corner on the line counts once as left and once as right of it; the line lies in the shape where
  // either of these two lines, a hair apart, does.
  const left = spans(rings, p, q, (s) => s > 0);
  const right = spans(rings, p, q, (s) => s >= 0);
  return merge([...left, ...right]);
}

function spans(rings: readonly Ring[], p: Point, q: Point, isLeft: (side: number) => boolean): Span[] {
  const cuts: number[] = [];
  for (const ring of rings) {
    let a = ring[ring.length - 1]!;
    for (const b of ring) {
      const [s, t] = [side(p, q, a), side(p, q, b)];
      if (isLeft(s) !== isLeft(t)) cuts.push(parameter(p, q, a, b, s / (s - t)));
      a = b;
    }
  }
  cuts.sort((one, other) => one - other);
  return cuts.flatMap((from, i) => (i % 2 === 0 ? [{ from, to: cuts[i + 1]! }] : []));
}

function parameter(p: Point, q: Point, a: Point, b: Point, part: number): number {
  const [dx, dy] = [q[0] - p[0], q[1] - p[1]];
  const [x, y] = [a[0] + part * (b[0] - a[0]), a[1] + part * (b[1] - a[1])];
  return ((x - p[0]) * dx + (y - p[1]) * dy) / (dx * dx + dy * dy);
}

function merge(all: readonly Span[]): Span[] {
  const merged: Span[] = [];
  for (const span of all.filter(({ from, to }) => to > from).sort((a, b) => a.from - b.from)) {
    const last = merged[merged.length - 1];
    if (last && span.from <= last.to)
      merged[merged.length - 1] = { from: last.from, to: Math.max(last.to, span.to) };
    else merged.push(span);
  }
  return merged;
}
