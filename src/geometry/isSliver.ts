import { isNarrower } from './isNarrower.ts';
import type { Ring } from './Ring.ts';
import { ringArea } from './ringArea.ts';
import { ringLength } from './ringLength.ts';

/** What is thinner than this, in ticks, is left over from rounding: 0.006 mm. */
export const SLIVER_WIDTH = 2;

/**
 * Whether a ring is a leftover of rounding where two edges nearly coincide: less than two ticks from
 * side to side, or, where it bends, so little area for its length that it is thinner than that on average.
 *
 * @example isSliver([[0, 0], [5000, 0], [5000, 1], [0, 1]]) //=> true
 * @example isSliver([[0, 0], [5000, 0], [5000, 3], [0, 3]]) //=> false
 * @example isSliver([[0, 0], [5000, 0], [5000, 4000], [4999, 4000], [4999, 1], [0, 1]]) //=> true
 */
export function isSliver(ring: Ring): boolean {
  if (ring.length < 3) return true;
  const meanWidth = (2 * Math.abs(ringArea(ring))) / ringLength(ring);
  return meanWidth < SLIVER_WIDTH / 2 || isNarrower(ring, SLIVER_WIDTH);
}
