import type { Point, Ring } from '../geometry/index.ts';
import type { Ticks } from '../measure/index.ts';
import type { Sized } from './Cell.ts';
import { onRows } from './onRows.ts';
import type { Pattern } from './Pattern.ts';

/**
 * Hexagons in rows along x, flat beside flat, points up; each row half a tile along against the one below.
 * The tile's length is across flats, its width across points. Turned by 90° the flats lie level.
 *
 * @example hexagon({ key: 'field', length: 800, width: 924 }, 10).a //=> [810, 0]
 * @example hexagon({ key: 'field', length: 800, width: 924 }, 10).b //=> [0, 1403]
 */
export function hexagon({ key, length, width }: Sized, joint: Ticks): Pattern {
  const along = length + joint;
  return onRows('hexagon', key, hexagonRing(length, width), [along, Math.round(along * Math.sqrt(3))], joint);
}

function hexagonRing(flats: Ticks, points: Ticks): Ring {
  const [half, low, high] = [flats / 2, points / 4, (points * 3) / 4].map(Math.round) as [
    Ticks,
    Ticks,
    Ticks,
  ];
  const ring: Point[] = [
    [half, 0],
    [flats, low],
    [flats, high],
    [half, points],
    [0, high],
    [0, low],
  ];
  return ring;
}
