import type { Point } from './Point.ts';
import type { Ring } from './Ring.ts';
import { side } from './side.ts';

/** Where a point lies as seen from a ring or shape. */
export type Where = 'inside' | 'on' | 'outside';

/**
 * Where a point lies by a ring, whichever way it runs; exact for whole ticks.
 *
 * @example whereInRing([2, 2], [[0, 0], [4, 0], [4, 4], [0, 4]]) //=> 'inside'
 * @example whereInRing([4, 2], [[0, 0], [4, 0], [4, 4], [0, 4]]) //=> 'on'
 * @example whereInRing([5, 2], [[0, 0], [4, 0], [4, 4], [0, 4]]) //=> 'outside'
 */
export function whereInRing(point: Point, ring: Ring): Where {
  const y = point[1];
  let inside = false;
  let a = ring[ring.length - 1]!;
  for (const b of ring) {
    const crosses = a[1] > y !== b[1] > y;
    const turn = side(a, b, point);
    if (turn === 0 && onSpan(a, b, point)) return 'on';
    if (crosses && turn > 0 === b[1] > a[1]) inside = !inside;
    a = b;
  }
  return inside ? 'inside' : 'outside';
}

function onSpan(a: Point, b: Point, p: Point): boolean {
  return (a[0] - p[0]) * (b[0] - p[0]) <= 0 && (a[1] - p[1]) * (b[1] - p[1]) <= 0;
}
