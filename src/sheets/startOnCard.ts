import type { Cut } from '../cuts/Cut.ts';
import type { CardTurn } from '../drawing/index.ts';
import type { TileSpec } from '../job/Job.ts';
import type { SheetContext } from './SheetContext.ts';
import { factoryOf, type StartWay, startSaid, startWays } from './startsInTile.ts';

/** Sides of a tile as one walks round it: each quarter turn brings a side to the place of the next. */
const ROUND = ['right', 'top', 'left', 'bottom'] as const;

/**
 * Where in its tile a cut begins that its card shows moved along it: how far from which edge, as the card is turned; empty where it begins at
 * the edges of its tile.
 *
 * @param shown the cut as its card shows it.
 */
export function startOnCard(context: SheetContext, shown: Cut, tile: TileSpec, turn: CardTurn): string {
  const ways = startWays(shown.shape.outer, factoryOf(shown), tile).map(
    ({ side, far }): StartWay => ({ side: ROUND[(ROUND.indexOf(side) + turn / 90) % 4]!, far }),
  );
  const from = startSaid(context, ways);
  return from === '' ? '' : context.say('sheet.hard-cuts.starts', { from });
}
