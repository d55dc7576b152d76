import type { Cut, CutEdge } from '../cuts/Cut.ts';
import type { Point } from '../geometry/index.ts';

const same = (p: Point, q: Point) => p[0] === q[0] && p[1] === q[1];

/**
 * The way along a sawn edge, point by point: of one that follows a curved wall the points of the piece's outline between its ends,
 * else its ends only.
 */
export function curveSpots(
  { shape: { outer } }: Pick<Cut, 'shape'>,
  { from, to, via }: CutEdge,
): readonly Point[] {
  const [start, end] = [from, to].map((point) => outer.findIndex((one) => same(one, point)));
  if (!via || start === undefined || end === undefined || start < 0 || end < 0) return [from, to];
  const count = (end - start + outer.length) % outer.length;
  return Array.from({ length: count + 1 }, (_, i) => outer[(start + i) % outer.length]!);
}
