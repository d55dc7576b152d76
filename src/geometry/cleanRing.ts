import type { Point } from './Point.ts';
import type { Ring } from './Ring.ts';
import { side } from './side.ts';

/**
 * A ring without repeated points, points on a straight line between their neighbours, and spikes of no
 * width. Empty when nothing with an area is left.
 *
 * @example cleanRing([[0, 0], [2, 0], [4, 0], [4, 4], [4, 4], [0, 4]]) //=> [[0, 0], [4, 0], [4, 4], [0, 4]]
 * @example cleanRing([[0, 0], [4, 0], [2, 0]]) //=> []
 */
export function cleanRing(ring: Ring): Ring {
  const kept: Point[] = [];
  for (const point of ring) {
    while (kept.length > 1 && side(kept[kept.length - 2]!, kept[kept.length - 1]!, point) === 0) kept.pop();
    if (kept.length === 0 || !same(kept[kept.length - 1]!, point)) kept.push(point);
  }
  // The seam: the ends are tested against one another until nothing more falls away.
  let start = 0;
  let end = kept.length;
  while (end - start > 2) {
    if (side(kept[end - 2]!, kept[end - 1]!, kept[start]!) === 0) end--;
    else if (side(kept[end - 1]!, kept[start]!, kept[start + 1]!) === 0) start++;
    else return kept.slice(start, end);
  }
  return [];
}

function same(a: Point, b: Point): boolean {
  return a[0] === b[0] && a[1] === b[1];
}
