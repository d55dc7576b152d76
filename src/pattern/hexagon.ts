import type { Ticks } from '../measure/index.ts';
import type { Sized } from './Cell.ts';
import { onRows } from './onRows.ts';
import type { Pattern } from './Pattern.ts';
import { tileOutline } from './tileOutline.ts';

/**
 * Hexagons in rows along x, flat beside flat, points up; each row half a tile along against the one below.
 * The tile's length is across flats, its width across points. Turned by 90° the flats lie level.
 *
 * @example hexagon({ key: 'field', length: 800, width: 924 }, 10).a //=> [810, 0]
 * @example hexagon({ key: 'field', length: 800, width: 924 }, 10).b //=> [0, 1403]
 */
export function hexagon({ key, length, width }: Sized, joint: Ticks): Pattern {
  const along = length + joint;
  const ring = tileOutline({ length, width, shape: { kind: 'hexagon' } });
  return onRows('hexagon', key, ring, [along, Math.round(along * Math.sqrt(3))], joint);
}
