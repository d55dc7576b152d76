import type { Job, TileSpec } from '../job/Job.ts';
import type { Ticks } from '../measure/index.ts';
import { bedDepth, TROWEL_ANGLE } from '../trade/index.ts';
import { isSpread } from './layersUnder.ts';

/**
 * Depth of the soft joints of a floor in ticks, from the face of the tile to what the bed lies on, as no mortar stays in them: the
 * thickest of its tiles and the bed under it as heights count it, else as the trowel leaves it.
 *
 * @example
 * jointDepth({ base: { fresh: [{ name: 'mortar', thickness: 1016 }, { name: 'tile', thickness: 3048 }] } }, [{ thickness: 3048 }]) //=> 4064
 */
export function jointDepth(
  { base, products }: Pick<Job, 'base' | 'products'>,
  tiles: readonly Pick<TileSpec, 'thickness'>[],
): Ticks {
  const stated = base.fresh.at(-2);
  const bed =
    stated && isSpread(stated)
      ? stated.thickness
      : Math.round(bedDepth(products.mortar.notch, TROWEL_ANGLE.value));
  return Math.max(...tiles.map(({ thickness }) => thickness)) + bed;
}
