import { convexHull } from './convexHull.ts';
import { distancePoints } from './distance.ts';
import { isStrictlyConvex } from './isStrictlyConvex.ts';
import type { Ring } from './Ring.ts';
import { side } from './side.ts';

/**
 * The smallest distance between two parallel lines that hold a ring between them, in ticks: the width
 * of the narrowest slot that it passes through.
 *
 * @example narrowness([[0, 0], [30, 0], [30, 4], [0, 4]]) //=> 4
 * @example narrowness([[0, 0], [3, 4], [6, 8]]) //=> 0
 */
export function narrowness(ring: Ring): number {
  const hull = isStrictlyConvex(ring) ? ring : convexHull(ring);
  const n = hull.length;
  if (n < 3) return 0;
  let least = Infinity;
  // The farthest point only ever moves on as the edge does, so one walk round the hull is enough.
  for (let i = 0, far = 1; i < n; i++) {
    const [a, b] = [hull[i]!, hull[(i + 1) % n]!];
    while (side(a, b, hull[(far + 1) % n]!) > side(a, b, hull[far]!)) far = (far + 1) % n;
    least = Math.min(least, side(a, b, hull[far]!) / distancePoints(a, b));
  }
  return least;
}
