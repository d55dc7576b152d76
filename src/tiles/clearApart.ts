import { distanceShapes, type Point, type Ring, side } from '../geometry/index.ts';
import type { Ticks } from '../measure/index.ts';

/**
 * The distance of two convex rings, 0 where they overlap. Where an edge of one has as much clear outside it as is enough, that: most
 * that are apart are so by an edge, and nothing more need be measured.
 *
 * @param enough in ticks.
 * @example clearApart([[0, 0], [4, 0], [4, 4], [0, 4]], [[7, 8], [9, 8], [9, 9]], 9) //=> 5
 * @example clearApart([[0, 0], [4, 0], [4, 4], [0, 4]], [[7, 8], [9, 8], [9, 9]], 2) //=> 3
 */
export function clearApart(a: Ring, b: Ring, enough: Ticks): number {
  const clear = clearOf(a, b, enough) || clearOf(b, a, enough);
  if (clear >= enough || clear <= 0) return clear;
  return distanceShapes({ outer: a, holes: [] }, { outer: b, holes: [] });
}

/** How far b lies outside that edge of a which it lies farthest outside of, or outside the first with so much clear; 0 where outside none. */
function clearOf(a: Ring, b: Ring, enough: Ticks): number {
  let most = 0;
  for (let i = 0; i < a.length && most < enough; i++) {
    const [from, to] = [a[i]!, a[(i + 1) % a.length]!];
    let least = Number.POSITIVE_INFINITY;
    for (let k = 0; k < b.length && least > 0; k++) least = Math.min(least, -side(from, to, b[k]!));
    if (least > 0) most = Math.max(most, least / lengthOf(from, to));
  }
  return most;
}

/** Coordinates are whole ticks, whose squares are exact: the root alone is as true as the slower function for lengths. */
function lengthOf(from: Point, to: Point): number {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  return Math.sqrt(dx * dx + dy * dy);
}
