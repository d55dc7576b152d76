import type { Ticks } from '../measure/index.ts';
import type { CutSize } from './Cut.ts';
import type { TileBox } from './TileBox.ts';

/**
 * By what a size of a cut is put in order, largest first: as it is sawn; what is taken away of a side of the tile by what it leaves of that, so that the
 * cut stands among those of its length.
 *
 * @example orderSize({ what: 'takenAcross', saw: 40 }, { length: 600, width: 150 }) //=> 560
 * @example orderSize({ what: 'cornerAcross', saw: 40 }, { length: 600, width: 150 }) //=> 40
 */
export function orderSize(
  { what, saw }: Pick<CutSize, 'what' | 'saw'>,
  { length, width }: Pick<TileBox, 'length' | 'width'>,
): Ticks {
  if (what === 'takenAcross') return length - saw;
  return what === 'takenUp' ? width - saw : saw;
}
