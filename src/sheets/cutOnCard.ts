import type { Cut } from '../cuts/Cut.ts';
import { isHard } from '../cuts/isHard.ts';
import { looseOf } from '../cuts/looseOf.ts';
import { slideCut } from '../cuts/slideCut.ts';
import type { Packet, PacketSurface } from '../packet/Packet.ts';
import { shownSlide } from './elsewhere.ts';

/**
 * A hard cut as its card shows it: in the place of its tile that the tile sheet cuts it from, so that both papers mark the same lines on the
 * tile. Other cuts are set by a fence, whichever tile they come from.
 */
export function cutOnCard(surface: PacketSurface, packet: Packet, cut: Cut): Cut {
  const by = shownSlide(packet, surface, cut);
  const { pieces, edges } = surface;
  const piece = pieces.find(({ id }) => id === cut.pieces[0]);
  if (!piece || !isHard(cut) || (by[0] === 0 && by[1] === 0)) return cut;
  const { turns } = packet.spec.tiles.find(({ key }) => key === cut.tile)!;
  return slideCut(cut, by, { piece, loose: looseOf(piece, edges), turns, step: packet.spec.print.step });
}
