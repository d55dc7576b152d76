import { narrowness } from './narrowness.ts';
import type { Ring } from './Ring.ts';
import { ringArea } from './ringArea.ts';
import { ringLength } from './ringLength.ts';

/**
 * Whether a ring passes through a slot narrower than so many ticks. Nothing has more area than half its length times the slot,
 * so that most rings need no closer look.
 *
 * @example isNarrower([[0, 0], [30, 0], [30, 4], [0, 4]], 5) //=> true
 * @example isNarrower([[0, 0], [30, 0], [30, 4], [0, 4]], 4) //=> false
 */
export function isNarrower(ring: Ring, than: number): boolean {
  const meanWidth = (2 * Math.abs(ringArea(ring))) / ringLength(ring);
  return !(meanWidth >= than) && narrowness(ring) < than;
}
