import { cleanRing } from './cleanRing.ts';
import { intersect } from './intersect.ts';
import { isConvex } from './isConvex.ts';
import { isSliver } from './isSliver.ts';
import type { Point } from './Point.ts';
import type { Ring } from './Ring.ts';
import { side } from './side.ts';

/**
 * The part of a ring within a convex ring, both counter-clockwise; corners rounded to ticks once, at the
 * end. A convex ring gives one ring or none, fast; any other goes the slower way, so that what falls
 * apart comes back as so many rings.
 *
 * @example clipConvex([[0, 0], [9, 0], [9, 9], [0, 9]], [[5, -5], [20, -5], [20, 20], [5, 20]]) //=> [[[5, 0], [9, 0], [9, 9], [5, 9]]]
 * @example clipConvex([[0, 0], [9, 0], [9, 9], [0, 9]], [[15, -5], [20, -5], [20, 20], [15, 20]]) //=> []
 */
export function clipConvex(ring: Ring, convex: Ring): Ring[] {
  if (!isConvex(ring))
    return intersect([{ outer: ring, holes: [] }], [{ outer: convex, holes: [] }]).map((s) => s.outer);
  let kept: Ring = ring;
  let a = convex[convex.length - 1]!;
  for (const b of convex) {
    kept = keepLeft(kept, a, b);
    a = b;
  }
  const clean = kept === ring ? ring : cleanRing(kept.map(roundPoint));
  return isSliver(clean) ? [] : [clean];
}

/** The part of a convex ring to the left of the line from a to b; the ring itself if that is all of it. */
function keepLeft(ring: Ring, a: Point, b: Point): Ring {
  const sides = ring.map((point) => side(a, b, point));
  if (sides.every((s) => s >= 0)) return ring;
  const kept: Point[] = [];
  let last = ring.length - 1;
  for (let i = 0; i < ring.length; i++) {
    if (cut(sides[last]!, sides[i]!)) kept.push(between(ring[last]!, ring[i]!, sides[last]!, sides[i]!));
    if (sides[i]! >= 0) kept.push(ring[i]!);
    last = i;
  }
  return kept;
}

function cut(s: number, t: number): boolean {
  return (s > 0 && t < 0) || (s < 0 && t > 0);
}

/** Always reckoned from the point on the left, so that two pieces cut on one line share its corner. */
function between(p: Point, q: Point, s: number, t: number): Point {
  if (s < 0) return between(q, p, t, s);
  const part = s / (s - t);
  return [p[0] + part * (q[0] - p[0]), p[1] + part * (q[1] - p[1])];
}

function roundPoint([x, y]: Point): Point {
  return [Math.round(x), Math.round(y)];
}
