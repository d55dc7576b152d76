import type { Ticks } from '../../measure/index.ts';
import type { AxisStart } from '../Layout.ts';

/** A stretch of field, a tile's size along it and the joint; all in ticks. */
export interface Stretch {
  readonly low: Ticks;
  readonly high: Ticks;
  readonly size: Ticks;
  readonly joint: Ticks;
}

/** A start on one axis: where the lower edge of a tile stands, and how far that is from balance. */
export interface AxisOffer {
  readonly what: AxisStart['what'];
  readonly position: Ticks;
  readonly shift: Ticks;
}

/**
 * Where a tile's lower edge stands if the middle of a joint is to lie on the middle of the stretch. Of two
 * equal cuts one may be a tick larger: the one at the lower end.
 *
 * @example jointOnMiddle({ low: 0, high: 1001, size: 300, joint: 10 }) //=> 506
 */
export function jointOnMiddle({ low, high, joint }: Stretch): Ticks {
  return low + Math.ceil((high - low + joint) / 2);
}

/**
 * Where a tile's lower edge stands if the middle of the tile is to lie on the middle of the stretch.
 *
 * @example tileOnMiddle({ low: 0, high: 1001, size: 300, joint: 10 }) //=> 351
 */
export function tileOnMiddle({ low, high, size }: Stretch): Ticks {
  return low + Math.ceil((high - low - size) / 2);
}

/**
 * The four starts that are tried on a stretch: joint on the middle, tile on the middle, and each shifted a
 * quarter of the module.
 *
 * @example balancedOffers({ low: 0, high: 1000, size: 300, joint: 10 }).map((one) => one.position) //=> [505, 350, 583, 428]
 */
export function balancedOffers(stretch: Stretch): AxisOffer[] {
  const quarter = Math.round((stretch.size + stretch.joint) / 4);
  const [joint, tile] = [jointOnMiddle(stretch), tileOnMiddle(stretch)];
  return [
    { what: 'joint', position: joint, shift: 0 },
    { what: 'tile', position: tile, shift: 0 },
    { what: 'jointQuarter', position: joint + quarter, shift: quarter },
    { what: 'tileQuarter', position: tile + quarter, shift: quarter },
  ];
}
