import { distancePointSegment } from './distance.ts';
import type { Point } from './Point.ts';
import { pointInRing } from './pointInRing.ts';
import type { Ring } from './Ring.ts';
import { segmentIntersection } from './segmentIntersection.ts';

/**
 * Whether the straight line between two corners of a ring runs inside it, touching no side of it, and keeps `clear` off all
 * other corners.
 *
 * @example
 * inSight([[0, 0], [4, 0], [4, 3], [0, 3]], 0, 2, 0) //=> true
 * inSight([[0, 0], [4, 0], [1, 1], [0, 4]], 1, 3, 0) //=> false
 */
export function inSight(ring: Ring, from: number, to: number, clear: number): boolean {
  const [a, b] = [ring[from]!, ring[to]!];
  const middle: Point = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
  const blocked = ring.some((corner, i) => {
    const next = (i + 1) % ring.length;
    if ([i, next].some((end) => end === from || end === to)) return false;
    return segmentIntersection(a, b, corner, ring[next]!) !== null;
  });
  const scraped = ring.some(
    (corner, i) => i !== from && i !== to && distancePointSegment(corner, a, b) < clear,
  );
  return !blocked && !scraped && pointInRing(middle, ring);
}
