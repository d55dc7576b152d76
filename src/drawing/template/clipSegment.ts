import type { Box } from '../boxes.ts';
import type { Spot } from '../Mark.ts';

/**
 * The part of a segment that lies in a box, or nothing (Liang–Barsky clipping).
 *
 * @example clipSegment([0, 5], [20, 5], { left: 5, bottom: 0, right: 10, top: 10 }) //=> [[5, 5], [10, 5]]
 * @example clipSegment([0, 11], [20, 11], { left: 5, bottom: 0, right: 10, top: 10 }) //=> undefined
 */
export function clipSegment(a: Spot, b: Spot, box: Box): readonly [Spot, Spot] | undefined {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  let [low, high] = [0, 1];
  const limits = [
    [-dx, a[0] - box.left],
    [dx, box.right - a[0]],
    [-dy, a[1] - box.bottom],
    [dy, box.top - a[1]],
  ] as const;
  for (const [run, room] of limits) {
    if (run === 0 && room < 0) return undefined;
    if (run < 0) low = Math.max(low, room / run);
    if (run > 0) high = Math.min(high, room / run);
  }
  const at = (share: number): Spot => [a[0] + dx * share, a[1] + dy * share];
  return low < high ? [at(low), at(high)] : undefined;
}
