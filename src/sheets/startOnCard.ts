import type { Cut } from '../cuts/Cut.ts';
import type { CardTurn } from '../drawing/index.ts';
import type { Packet, PacketSurface } from '../packet/Packet.ts';
import { shownTile } from './elsewhere.ts';
import type { SheetContext } from './SheetContext.ts';
import { startSaid, waysInTile } from './startsInTile.ts';

/** Sides of a tile as one walks round it: each quarter turn brings a side to the place of the next. */
const ROUND = ['right', 'top', 'left', 'bottom'] as const;

/**
 * Where in its tile a cut begins that its card shows moved along it: how far from which edge, as the card is turned; empty where it begins at
 * the edges of its tile. Of an offcut the edge is one that it has, as the tile sheet tells it.
 *
 * @param turn the turn from the cut's own axes to the card.
 */
export function startOnCard(context: SheetContext, surface: PacketSurface, cut: Cut, turn: CardTurn): string {
  const { packet, say } = context;
  const tile = packet.spec.tiles.find(({ key }) => key === cut.tile)!;
  const from = shownTile(packet, surface, cut);
  if (!from) return '';
  const { pieces, at } = from;
  const cuts = pieces.map((piece) => cutOf(packet, piece));
  // The tile sheet has the piece turned from its cut's own axes.
  const quarters = Math.round((((turn - pieces[at]!.turn) % 360) + 360) / 90);
  const ways = waysInTile(tile, cuts, from, at).map(({ side, far }) => ({
    side: side === 'end' ? side : ROUND[(ROUND.indexOf(side) + quarters) % 4]!,
    far,
  }));
  const said = startSaid(context, ways);
  return said === '' ? '' : say('sheet.hard-cuts.starts', { from: said });
}

/** The cut of a piece; where a job has several surfaces, the piece's name begins with that of its surface. */
function cutOf({ surfaces }: Packet, { piece, cut }: { readonly piece: string; readonly cut: number }): Cut {
  const own = surfaces.find(({ name }) => surfaces.length > 1 && piece.startsWith(`${name}:`));
  return (own ?? surfaces[0]!).cuts.find(({ number }) => number === cut)!;
}
