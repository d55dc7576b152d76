import type { Ticks } from '../measure/index.ts';
import type { Sized } from './Cell.ts';
import { onUnits } from './onUnits.ts';
import type { Pattern } from './Pattern.ts';

/**
 * Four sizes: one of two by three units, two squares of two, one of one by two and two squares of one, in a
 * repeat of eighteen square units. Tiles in that order of size.
 *
 * @example fourSizes([{ key: 'xl', length: 590, width: 390 }, { key: 'l', length: 390, width: 390 }, { key: 'm', length: 390, width: 190 }, { key: 's', length: 190, width: 190 }], 10).tiles.length //=> 6
 */
export function fourSizes([largest, large, oblong, small]: readonly Sized[], joint: Ticks): Pattern {
  return onUnits(
    'fourSizes',
    [
      [3, 1],
      [0, 6],
    ],
    [
      { tile: largest!, at: [0, 0], size: [2, 3] },
      { tile: large!, at: [2, -1], size: [2, 2] },
      { tile: large!, at: [1, -3], size: [2, 2] },
      { tile: oblong!, at: [2, 1], size: [1, 2] },
      { tile: small!, at: [1, -1], size: [1, 1] },
      { tile: small!, at: [0, -3], size: [1, 1] },
    ],
    joint,
  );
}
