import { isConvex } from './isConvex.ts';
import type { Point } from './Point.ts';
import type { Ring } from './Ring.ts';
import { side } from './side.ts';

/**
 * A ring that touches itself, taken apart at the places where it does: two squares that meet in a corner
 * are two rings, and a hole that touches the outer ring becomes a ring of its own.
 *
 * @example splitTouching([[0, 0], [2, 2], [4, 2], [4, 4], [2, 4], [2, 2], [0, 2]]) //=> [[[2, 2], [4, 2], [4, 4], [2, 4]], [[0, 0], [2, 2], [0, 2]]]
 */
export function splitTouching(ring: Ring): Ring[] {
  if (isConvex(ring)) return [ring];
  const sorted = [...ring].sort(byPlace);
  const touched = withTouches(ring, sorted);
  // Most rings touch nowhere, which their points in order tell without a name for each.
  if (touched.length === ring.length && !sorted.some(isRepeated)) return ring.length > 2 ? [ring] : [];
  const walked: Point[] = [];
  const parts: Ring[] = [];
  const at = new Map<string, number>();
  for (const point of touched) {
    const key = `${point[0]},${point[1]}`;
    const before = at.get(key);
    if (before !== undefined) {
      const loop = walked.splice(before);
      for (const left of loop) at.delete(`${left[0]},${left[1]}`);
      parts.push(loop);
    }
    at.set(key, walked.length);
    walked.push(point);
  }
  return [...parts, walked].filter((part) => part.length > 2);
}

/** The ring with a point put in wherever one of its corners, given from left to right, lies on another of its edges. */
function withTouches(ring: Ring, sorted: Ring): Ring {
  const n = ring.length;
  const out: Point[] = [];
  for (let i = 0; i < n; i++) {
    const [a, b] = [ring[i]!, ring[i + 1 === n ? 0 : i + 1]!];
    out.push(a);
    const touches = touchesOn(a, b, sorted);
    if (touches.length > 1) touches.sort((p, q) => reach(a, p) - reach(a, q));
    out.push(...touches);
  }
  return out;
}

/** Of points from left to right those that lie on an edge: only such as are neither left nor right of it are looked at. */
function touchesOn(a: Point, b: Point, sorted: Ring): Point[] {
  const [left, right] = [Math.min(a[0], b[0]), Math.max(a[0], b[0])];
  const touches: Point[] = [];
  for (let i = firstFrom(sorted, left); i < sorted.length && sorted[i]![0] <= right; i++) {
    if (liesBetween(a, b, sorted[i]!)) touches.push(sorted[i]!);
  }
  return touches;
}

/** The place of the first of points from left to right that is not left of x. */
function firstFrom(sorted: Ring, x: number): number {
  let [low, high] = [0, sorted.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (sorted[middle]![0] < x) low = middle + 1;
    else high = middle;
  }
  return low;
}

function byPlace(p: Point, q: Point): number {
  return p[0] - q[0] || p[1] - q[1];
}

function isRepeated([x, y]: Point, i: number, sorted: Ring): boolean {
  const before = sorted[i - 1];
  return before !== undefined && before[0] === x && before[1] === y;
}

function liesBetween(a: Point, b: Point, p: Point): boolean {
  const [x, y] = p;
  if (x < Math.min(a[0], b[0]) || x > Math.max(a[0], b[0])) return false;
  if (y < Math.min(a[1], b[1]) || y > Math.max(a[1], b[1])) return false;
  if ((x === a[0] && y === a[1]) || (x === b[0] && y === b[1])) return false;
  return side(a, b, p) === 0;
}

function reach(a: Point, p: Point): number {
  return Math.abs(p[0] - a[0]) + Math.abs(p[1] - a[1]);
}
