import type { Box } from '../boxes.ts';
import type { Spot } from '../Mark.ts';

/**
 * The part of a segment that lies in a box, or nothing (Liang–Barsky clipping).
 *
 * @example clipSegment([0, 5], [20, 5], { left: 5, bottom: 0, right: 10, top: 10 }) //=> [[5, 5], [10, 5]]
 * @example clipSegment([0, 11], [20, 11], { left: 5, bottom: 0, right: 10, top: 10 }) //=> undefined
 */
export function clipSegment(a: Spot, b: Spot, box: Box): readonly [Spot, Spot] | undefined {
  const dx = b[0] - a[0];
  const dy = b[1] - a[1];
  // Asked for hundreds of thousands of leaders a plan: nothing is made here but what is given back.
  if (dx === 0 && (a[0] < box.left || a[0] > box.right)) return undefined;
  if (dy === 0 && (a[1] < box.bottom || a[1] > box.top)) return undefined;
  const [inX, outX] = dx > 0 ? [box.left - a[0], box.right - a[0]] : [box.right - a[0], box.left - a[0]];
  const [inY, outY] = dy > 0 ? [box.bottom - a[1], box.top - a[1]] : [box.top - a[1], box.bottom - a[1]];
  const low = Math.max(0, dx === 0 ? 0 : inX / dx, dy === 0 ? 0 : inY / dy);
  const high = Math.min(1, dx === 0 ? 1 : outX / dx, dy === 0 ? 1 : outY / dy);
  if (!(low < high)) return undefined;
  return [
    [a[0] + dx * low, a[1] + dy * low],
    [a[0] + dx * high, a[1] + dy * high],
  ];
}
