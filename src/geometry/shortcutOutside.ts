import type { Box } from './bounds.ts';
import type { Point } from './Point.ts';
import type { Ring } from './Ring.ts';

/**
 * A ring that covers the same part of a box with fewer points: a detour wholly beyond one side of the box
 * is cut short. Edges that meet the box stay as they are, to the tick; outside it the ring may overlap
 * itself. Empty when it never comes near.
 *
 * @example shortcutOutside([[0, 0], [90, 0], [95, 50], [90, 90], [0, 90]], {minX: 2, minY: 2, maxX: 4, maxY: 4}) //=> [[0, 0], [90, 0], [90, 90], [0, 90]]
 */
export function shortcutOutside(ring: Ring, box: Box): Ring {
  const kept: Point[] = [];
  const beyond: number[] = [];
  for (const point of ring) {
    const code = sidesBeyond(point, box);
    // The triangle of three points beyond one side has nothing to do with the box: its middle point goes.
    while (kept.length > 1 && (beyond[kept.length - 2]! & beyond[kept.length - 1]! & code) !== 0) {
      kept.pop();
      beyond.pop();
    }
    kept.push(point);
    beyond.push(code);
  }
  let [start, end] = [0, kept.length];
  while (end - start > 2) {
    if ((beyond[end - 2]! & beyond[end - 1]! & beyond[start]!) !== 0) end--;
    else if ((beyond[end - 1]! & beyond[start]! & beyond[start + 1]!) !== 0) start++;
    else return kept.slice(start, end);
  }
  return [];
}

/** One bit for each side of the box that the point lies beyond; none for a point on its edge. */
function sidesBeyond([x, y]: Point, box: Box): number {
  return (x < box.minX ? 1 : 0) | (x > box.maxX ? 2 : 0) | (y < box.minY ? 4 : 0) | (y > box.maxY ? 8 : 0);
}
