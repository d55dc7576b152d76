import { distancePointSegment } from './distance.ts';
import { SLIVER_WIDTH } from './isSliver.ts';
import type { Point } from './Point.ts';
import type { Ring } from './Ring.ts';

/**
 * A ring without spikes and slits thinner than two ticks: what rounding leaves where two edges that run side by side all but
 * coincide. Corners only fall away, none is moved.
 *
 * @example withoutSpikes([[0, 0], [900, 0], [900, 400], [3000, 401], [0, 400]]) //=> [[0, 0], [900, 0], [900, 400], [0, 400]]
 * @example withoutSpikes([[0, 0], [900, 0], [900, 400], [3000, 440], [0, 400]]).length //=> 5
 */
export function withoutSpikes(ring: Ring): Ring {
  const n = ring.length;
  if (n < 4) return ring;
  const tip = ring.findIndex((at, i) => {
    const next = ring[(i + 1) % n]!;
    // A spike may end in a step of a tick instead of a point.
    const after = isNear(at, next) ? ring[(i + 2) % n]! : next;
    return turnsBack(ring[(i + n - 1) % n]!, at, after);
  });
  return tip < 0 ? ring : withoutSpikes(ring.filter((_, i) => i !== tip));
}

function isNear([x, y]: Point, [u, v]: Point): boolean {
  return Math.hypot(u - x, v - y) < SLIVER_WIDTH;
}

function turnsBack(before: Point, tip: Point, after: Point): boolean {
  const [ax, ay, bx, by] = [before[0] - tip[0], before[1] - tip[1], after[0] - tip[0], after[1] - tip[1]];
  if (ax * bx + ay * by <= 0) return false;
  const [near, far] = Math.hypot(ax, ay) < Math.hypot(bx, by) ? [before, after] : [after, before];
  return distancePointSegment(near, tip, far) < SLIVER_WIDTH;
}
