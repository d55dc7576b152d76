import { TICKS_PER_INCH, type Ticks } from '../../measure/index.ts';
import type { RoomEdge } from '../../room/Room.ts';

/** A tape along a bowed wall may read this much more than a straight one: half a sixteenth of an inch. */
const MOST_MORE: Ticks = TICKS_PER_INCH / 32;

/**
 * Whether a tape that lies along an edge reads nearly what a straight one does: along a straight or a bowed wall, not along a curved
 * one. A flat arc is longer than its chord c by 8·rise² / 3c, with c² = 8·rise·(radius − rise / 2).
 *
 * Source: the mensuration of circular segments as in Machinery's Handbook (from memory).
 *
 * @example tapeFollows({}) //=> true
 * @example tapeFollows({ arc: { centre: [0, 0], radius: 58523632, sign: 1, rise: 2032 } }) //=> true
 * @example tapeFollows({ arc: { centre: [0, 0], radius: 2462784, sign: 1, rise: 48768 } }) //=> false
 */
export function tapeFollows({ arc }: Pick<RoomEdge, 'arc'>): boolean {
  if (!arc) return true;
  const chord = Math.sqrt(8 * arc.rise * (arc.radius - arc.rise / 2));
  return (8 * arc.rise * arc.rise) / (3 * chord) <= MOST_MORE;
}
