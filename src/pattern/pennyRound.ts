import type { Ticks } from '../measure/index.ts';
import type { Sized } from './Cell.ts';
import { onRows } from './onRows.ts';
import type { Pattern } from './Pattern.ts';
import { tileOutline } from './tileOutline.ts';

/**
 * Round tiles in rows along x, each row half a tile along against the one below. Their sides are drawn by chords.
 *
 * @example pennyRound({ key: 'field', length: 800, width: 800 }, 10).a //=> [810, 0]
 */
export function pennyRound({ key, length }: Sized, joint: Ticks): Pattern {
  const along = length + joint;
  const ring = tileOutline({ length, width: length, shape: { kind: 'round' } });
  return onRows('pennyRound', key, ring, [along, Math.round(along * Math.sqrt(3))], joint);
}
