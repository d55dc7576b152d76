import type { Point } from './Point.ts';
import type { Ring } from './Ring.ts';
import { side } from './side.ts';

/**
 * The convex hull of some points, counter-clockwise from the leftmost (of these the lowest), without
 * points on a straight line. Fewer than three points come back where all lie on one line.
 *
 * @example convexHull([[0, 0], [4, 0], [2, 1], [4, 4], [0, 4], [2, 0]]) //=> [[0, 0], [4, 0], [4, 4], [0, 4]]
 */
export function convexHull(points: readonly Point[]): Ring {
  const sorted = [...points].sort((a, b) => a[0] - b[0] || a[1] - b[1]);
  const lower = chain(sorted);
  const upper = chain(sorted.reverse());
  if (lower.length < 2) return lower;
  return [...lower.slice(0, -1), ...upper.slice(0, -1)];
}

function chain(points: readonly Point[]): Point[] {
  const kept: Point[] = [];
  for (const point of points) {
    const last = kept[kept.length - 1];
    if (last && last[0] === point[0] && last[1] === point[1]) continue;
    while (kept.length > 1 && side(kept[kept.length - 2]!, kept[kept.length - 1]!, point) <= 0) kept.pop();
    kept.push(point);
  }
  return kept;
}
