import type { Point } from './Point.ts';
import { pointInShape } from './pointInShape.ts';
import type { Ring } from './Ring.ts';
import type { Shape } from './Shape.ts';
import { segmentsMeet } from './segmentsMeet.ts';

/**
 * The distance of a point from a segment, in ticks.
 *
 * @example distancePointSegment([5, 3], [0, 0], [9, 0]) //=> 3
 * @example distancePointSegment([13, 4], [0, 0], [10, 0]) //=> 5
 */
export function distancePointSegment(point: Point, a: Point, b: Point): number {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const along = (point[0] - a[0]) * dx + (point[1] - a[1]) * dy;
  const square = dx * dx + dy * dy;
  if (along <= 0 || square === 0) return distancePoints(point, a);
  if (along >= square) return distancePoints(point, b);
  return Math.abs(dx * (point[1] - a[1]) - dy * (point[0] - a[0])) / Math.sqrt(square);
}

/**
 * The distance of two points, in ticks. Squares of whole ticks are exact, so that the root alone is as true as the slower
 * function for lengths.
 *
 * @example distancePoints([1, 1], [4, 5]) //=> 5
 */
export function distancePoints(a: Point, b: Point): number {
  const [dx, dy] = [a[0] - b[0], a[1] - b[1]];
  return Math.sqrt(dx * dx + dy * dy);
}

/**
 * The distance between two segments, in ticks; 0 where they meet.
 *
 * @example distanceSegments([0, 0], [9, 0], [4, 2], [4, 8]) //=> 2
 */
export function distanceSegments(a: Point, b: Point, c: Point, d: Point): number {
  if (segmentsMeet(a, b, c, d)) return 0;
  return Math.min(
    distancePointSegment(a, c, d),
    distancePointSegment(b, c, d),
    distancePointSegment(c, a, b),
    distancePointSegment(d, a, b),
  );
}

/**
 * The least distance between two shapes, in ticks; 0 where they touch or overlap. A shape in the hole of
 * another is as far from it as from the hole's edge.
 *
 * @example distanceShapes({outer: [[0, 0], [4, 0], [4, 4], [0, 4]], holes: []}, {outer: [[7, 8], [9, 8], [9, 9]], holes: []}) //=> 5
 */
export function distanceShapes(a: Shape, b: Shape): number {
  if (pointInShape(a.outer[0]!, b) || pointInShape(b.outer[0]!, a)) return 0;
  let least = Infinity;
  for (const ring of [a.outer, ...a.holes]) {
    for (const other of [b.outer, ...b.holes]) least = leastOfRings(ring, other, least);
  }
  return least;
}

/** The least of a distance and that of two rings. Edges that are farther apart along an axis already are not measured. */
function leastOfRings(ring: Ring, other: Ring, known: number): number {
  let least = known;
  let a = ring[ring.length - 1]!;
  for (const b of ring) {
    let c = other[other.length - 1]!;
    for (const d of other) {
      if (!isApart(a, b, c, d, least)) least = Math.min(least, distanceSegments(a, b, c, d));
      c = d;
    }
    a = b;
  }
  return least;
}

/** Whether two segments lie farther apart than so much, one wholly left of, right of, below or above the other. */
function isApart(a: Point, b: Point, c: Point, d: Point, by: number): boolean {
  return (
    liesBefore(a[0], b[0], c[0] - by, d[0] - by) ||
    liesBefore(c[0], d[0], a[0] - by, b[0] - by) ||
    liesBefore(a[1], b[1], c[1] - by, d[1] - by) ||
    liesBefore(c[1], d[1], a[1] - by, b[1] - by)
  );
}

function liesBefore(one: number, other: number, from: number, to: number): boolean {
  return one < from && one < to && other < from && other < to;
}
