import type { Ring } from './Ring.ts';
import { selfCrossings } from './selfCrossings.ts';

/**
 * Whether a ring has three points or more and nowhere crosses, touches or doubles back on itself.
 *
 * @example isSimple([[0, 0], [4, 0], [4, 4], [0, 4]]) //=> true
 * @example isSimple([[0, 0], [4, 4], [4, 0], [0, 4]]) //=> false
 */
export function isSimple(ring: Ring): boolean {
  return ring.length > 2 && selfCrossings(ring).length === 0;
}
