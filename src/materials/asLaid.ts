import type { Layer } from '../job/Job.ts';
import { isBonded, isSpread } from './layersUnder.ts';

/**
 * New layers from the base up as they come to lie. A job may tell the mortar of a board after it, as it is bought for it: where it would
 * lie on the board under the next mortar it lies under the board, unless mortar is there already.
 *
 * @example
 * asLaid([{ name: 'board' }, { name: 'mortar' }, { name: 'mortar under tile' }, { name: 'tile' }]).map(({ name }) => name) //=> ['mortar', 'board', 'mortar under tile', 'tile']
 */
export function asLaid(fresh: readonly Layer[]): readonly Layer[] {
  const at = fresh.findIndex(
    (layer, i) =>
      isBonded(layer) &&
      !(fresh[i - 1] && isSpread(fresh[i - 1]!)) &&
      [fresh[i + 1], fresh[i + 2]].every((next) => next !== undefined && isSpread(next)),
  );
  if (at < 0) return fresh;
  const [board, mortar] = [fresh[at]!, fresh[at + 1]!];
  return [...fresh.slice(0, at), mortar, board, ...asLaid(fresh.slice(at + 2))];
}
