import type { Cut } from '../cuts/Cut.ts';
import { type CardTurn, cardTurn, shownHand } from '../drawing/index.ts';
import type { PacketSurface } from '../packet/Packet.ts';
import type { SheetContext } from './SheetContext.ts';

/** What a hard cut is called wherever its card, its template or its page for the saw names it, and how its card is turned. */
export interface CalledCut {
  readonly turn: CardTurn;
  readonly kind: string;
  /** On which side of its card more of its tile is taken away; empty where the cut has no hand. */
  readonly hand: string;
  /** That its card shows it as it lies on the plan; empty where it shows the wall at the foot. */
  readonly asPlan: string;
}

/** One name for a cut, however each drawing of it lies on its page. */
export function calledCut({ packet, say }: SheetContext, surface: PacketSurface, cut: Cut): CalledCut {
  const tile = packet.spec.tiles.find(({ key }) => key === cut.tile)!;
  const { turn, asPlan } = cardTurn(cut, surface);
  const hand = shownHand(cut, tile, turn);
  const figures = { count: cut.pieces.length, piece: cut.pieces[0]! };
  return {
    turn,
    kind: say(`cut.${cut.kind}`),
    hand: hand === 'none' ? '' : say(`cut.hand.${hand}`),
    asPlan: asPlan ? say('sheet.hard-cuts.asPlan', figures) : '',
  };
}
