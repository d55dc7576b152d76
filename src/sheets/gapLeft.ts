import { edgeGaps } from '../materials/edgeGaps.ts';
import type { PacketSurface } from '../packet/Packet.ts';
import type { SheetContext } from './SheetContext.ts';

/**
 * Figures for the words about what is left out at an edge: whether along all of it, at so many places, or no more than nicks at points
 * of tile; how wide the gap is there, and elsewhere. None of what lies along no edge of the room.
 */
export function gapLeft(
  { length }: Pick<SheetContext, 'length'>,
  surface: PacketSurface,
  edge: string,
): Readonly<Record<string, string | number>> {
  const found = edgeGaps(surface, surface.left).find((one) => one.edge.id === edge);
  if (!found || found.out?.length === found.length) return { strip: 'all', places: 0, gap: '' };
  const gap = length(found.edge.gap);
  return found.out
    ? { strip: 'places', places: found.out.places, gap, size: length(found.out.gap) }
    : { strip: 'nicks', places: found.nicks?.count ?? 0, gap };
}
