import { circleRuns, type Point } from '../geometry/index.ts';
import type { Corner } from './straighten.ts';
import type { OwnPiece } from './TileBox.ts';

/**
 * The corners of a ring with each run of short edges along a curved wall drawn together: to a straight edge where it bulges by no
 * more than `flat` ticks, half a saw step, else to one that is sawn by way of a point, the middle of its curve.
 *
 * @param onSide whether a straight edge is the tile's own.
 */
export function bendsOf(
  corners: readonly Corner[],
  curves: OwnPiece['curves'],
  flat: number,
  onSide: (from: Point, to: Point) => boolean,
): readonly Corner[] {
  if (!curves || curves.length === 0) return corners;
  const ring = corners.map(({ at }) => at);
  const sawn = (from: Point, to: Point) => !onSide(from, to);
  const runs = curves.flatMap((curve) => circleRuns(ring, curve, sawn));
  const dropped = new Set<number>();
  const outside = (start: number, step: 1 | -1) => {
    let i = start;
    while (dropped.has(i)) i = (i + step + ring.length) % ring.length;
    return i;
  };
  const via = new Map<number, Point>();
  // Where two curves meet, short edges may seem to lie on both: the deeper curve has them, the other begins where it ends.
  for (const { first, last, depth, middle } of [...runs].sort((a, b) => b.depth - a.depth)) {
    if (dropped.has(first) && dropped.has(last)) continue;
    const [from, to] = [outside(first, 1), outside(last, -1)];
    if (from === to) continue;
    if (depth > flat) via.set(from, middle);
    for (let i = (from + 1) % ring.length; i !== to; i = (i + 1) % ring.length) dropped.add(i);
  }
  return corners.flatMap((corner, i): Corner[] => {
    const middle = via.get(i);
    if (dropped.has(i)) return [];
    return middle ? [{ ...corner, via: middle }] : [corner];
  });
}
