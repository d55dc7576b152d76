import { firstTileOf } from '../layout/chalk/firstTile.ts';
import type { Chalk, Layout, Piece } from '../layout/Layout.ts';

/**
 * The tile with which the floor is begun, in the zone that is set first: the first of the layout where that lies in it, else the zone's own
 * beside the lines.
 */
export function firstOfWork(
  { chalk, pattern }: Pick<Layout, 'chalk' | 'pattern'>,
  zone: readonly Piece[],
): Pick<Chalk, 'firstPiece' | 'guide'> {
  const { firstPiece, guide } = chalk;
  if (zone.some(({ id }) => id === firstPiece)) return { firstPiece, ...(guide && { guide }) };
  return firstTileOf({ chalk, pattern }, zone);
}
