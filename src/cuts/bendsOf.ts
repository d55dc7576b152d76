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
  const via = new Map<number, Point>();
  for (const { first, last, depth, middle } of runs) {
    if (depth > flat) via.set(first, middle);
    for (let i = (first + 1) % ring.length; i !== last; i = (i + 1) % ring.length) dropped.add(i);
  }
  return corners.flatMap((corner, i): Corner[] => {
    const middle = via.get(i);
    if (dropped.has(i)) return [];
    return middle ? [{ ...corner, via: middle }] : [corner];
  });
}
