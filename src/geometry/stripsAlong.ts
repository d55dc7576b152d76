import { type Mitre, mitreAt } from './mitreAt.ts';
import type { Ring } from './Ring.ts';
import type { Shape } from './Shape.ts';
import { side } from './side.ts';
import { leftOf } from './unitAlong.ts';

/**
 * What lies within a given depth on the left of each edge of a ring: along edge i (from point i to the
 * next) a strip of depth `depths[i]`, square at its ends, but mitred with its neighbour where the ring
 * turns right. The strips overlap; corners are whole ticks. A depth of 0 gives no strip.
 *
 * @example stripsAlong([[0, 0], [9, 0], [9, 9], [0, 9]], [2, 0, 0, 0]) //=> [{outer: [[0, 0], [9, 0], [9, 2], [0, 2]], holes: []}]
 */
export function stripsAlong(ring: Ring, depths: readonly number[]): Shape[] {
  const n = ring.length;
  const mitres = ring.map((_, i) => mitreOf(ring, depths, i));
  const strips = ring.flatMap((a, i): Ring[] => {
    const [b, depth] = [ring[(i + 1) % n]!, depths[i] ?? 0];
    if (depth <= 0) return [];
    const [start, end] = [mitres[i], mitres[(i + 1) % n]];
    const wedges = start && 'wedge' in start ? [start.wedge] : [];
    const from = start && 'tip' in start ? start.tip : leftOf(a, b, a, depth);
    const to = end && 'tip' in end ? end.tip : leftOf(a, b, b, depth);
    return [[a, b, to, from], ...wedges];
  });
  return strips.map((outer) => ({ outer, holes: [] }));
}

/** The mitre at point i, between edge i - 1 and edge i; none where the ring turns left or a depth is 0. */
function mitreOf(ring: Ring, depths: readonly number[], i: number): Mitre | undefined {
  const n = ring.length;
  const before = (i + n - 1) % n;
  const [a, b, c] = [ring[before]!, ring[i]!, ring[(i + 1) % n]!];
  const [depthIn, depthOut] = [depths[before] ?? 0, depths[i] ?? 0];
  if (depthIn <= 0 || depthOut <= 0 || side(a, b, c) >= 0) return undefined;
  return mitreAt(a, b, c, depthIn, depthOut);
}
