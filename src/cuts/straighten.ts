import { distancePointSegment, type Point } from '../geometry/index.ts';

/** A corner of a piece and what leads on from it: a straight edge, or an arc of the circle with that index. */
export interface Corner {
  readonly at: Point;
  readonly arc?: number;
  /** Middle of the curve that leads on from it, along a curved wall. */
  readonly via?: Point;
}

/**
 * Drops corners that lie within `tolerance` ticks of the line between their neighbours, the least of them first; ends of arcs stay.
 *
 * A wall cut by many tiles, and two walls in one line with a doorway between, bend by a tick or two where they were rounded: no
 * saw can follow that.
 *
 * @example straighten([{ at: [0, 0] }, { at: [50, 1] }, { at: [100, 0] }, { at: [100, 90] }], 4).length //=> 3
 */
export function straighten(corners: readonly Corner[], tolerance: number): Corner[] {
  const kept = [...corners];
  while (kept.length > 3) {
    let least = tolerance;
    let at = -1;
    for (let i = 0; i < kept.length; i++) {
      const bend = bendAt(kept, i);
      if (bend <= least && (at < 0 || bend < least)) {
        least = bend;
        at = i;
      }
    }
    if (at < 0) break;
    kept.splice(at, 1);
  }
  return kept;
}

function bendAt(corners: readonly Corner[], i: number): number {
  const before = corners[(i + corners.length - 1) % corners.length]!;
  const here = corners[i]!;
  if ([here, before].some(({ arc, via }) => arc !== undefined || via)) return Number.POSITIVE_INFINITY;
  return distancePointSegment(here.at, before.at, corners[(i + 1) % corners.length]!.at);
}
