import type { Point } from './Point.ts';
import type { Ring } from './Ring.ts';

/**
 * The centre of gravity of a simple ring, either way round, rounded to ticks.
 *
 * @example ringCentroid([[0, 0], [30, 0], [30, 20], [0, 20]]) //=> [15, 10]
 * @example ringCentroid([[0, 0], [0, 60], [30, 0]]) //=> [10, 20]
 */
export function ringCentroid(ring: Ring): Point {
  const [x0, y0] = ring[0]!;
  let [twice, x, y] = [0, 0, 0];
  ring.forEach((from, i) => {
    const to = ring[(i + 1) % ring.length]!;
    // Seen from a corner of its own, so that numbers stay small enough to be exact.
    const [ax, ay, bx, by] = [from[0] - x0, from[1] - y0, to[0] - x0, to[1] - y0];
    const part = ax * by - bx * ay;
    twice += part;
    x += part * (ax + bx);
    y += part * (ay + by);
  });
  return [Math.round(x0 + x / (3 * twice)) + 0, Math.round(y0 + y / (3 * twice)) + 0];
}
