import type { Ticks } from '../measure/index.ts';
import type { Sized } from './Cell.ts';
import { onUnits } from './onUnits.ts';
import type { Pattern } from './Pattern.ts';

/**
 * Three sizes: squares of two units and of one, and a rectangle of one by two, one of each in a repeat of
 * seven square units. Tiles in that order of size: large square, rectangle, small square.
 *
 * @example threeSizes([{ key: 'l', length: 390, width: 390 }, { key: 'm', length: 390, width: 190 }, { key: 's', length: 190, width: 190 }], 10).b //=> [400, 200]
 */
export function threeSizes([large, oblong, small]: readonly Sized[], joint: Ticks): Pattern {
  return onUnits(
    'threeSizes',
    [
      [7, 0],
      [2, 1],
    ],
    [
      { tile: large!, at: [0, 0], size: [2, 2] },
      { tile: oblong!, at: [2, -1], size: [1, 2] },
      { tile: small!, at: [1, -1], size: [1, 1] },
    ],
    joint,
  );
}
