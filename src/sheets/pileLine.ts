import type { TilePlan } from '../tiles/TilePlan.ts';
import type { SheetContext } from './SheetContext.ts';

/** What the two plans of tiles come to, in tiles and in offcuts that wait; empty where none ever waits, and in older packets. */
export function pileLine({ say }: Pick<SheetContext, 'say'>, { plans }: TilePlan): string {
  if (!plans || plans.fewestTiles.pile === 0) return '';
  const { chosen, fewestTiles: fewest, smallestPile: small } = plans;
  if (small.pile === fewest.pile) return say('tally.onePlan', { pile: fewest.pile });
  return say('tally.twoPlans', {
    tiles: fewest.needed,
    pile: fewest.pile,
    smallTiles: small.needed,
    smallPile: small.pile,
    chosen,
  });
}
