import type { Cut } from './Cut.ts';
import { isInsideCut } from './isInsideCut.ts';

/**
 * The one definition of a hard cut, which is drawn on a card and as a template and hatched on plans: one into the tile; or a point with
 * more than one sawn edge, two of whose sizes would else stand on one line for the same edge of the tile.
 */
export function isHard({ kind, edges }: Pick<Cut, 'kind' | 'edges'>): boolean {
  return isInsideCut({ kind }) || (kind === 'point' && edges.filter(({ factory }) => !factory).length > 1);
}
