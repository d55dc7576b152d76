import type { PacketSurface } from '../packet/Packet.ts';
import type { Zone } from '../zones/Zone.ts';
import type { Say } from './SheetView.ts';
import { shortEdge } from './shortEdge.ts';

/**
 * The numbers of cuts of a zone at walls and straight faces where none of its found spaces tells them, as `C-D 16 · hall 20`: their row ends there in no
 * whole tile, or they lie before its end. Empty where all are told, and where a zone has no such spaces at all.
 */
export function uncheckedCuts(surface: PacketSurface, zone: Zone, say: Say): string {
  if (zone.found.length === 0) return '';
  const nameOf = (edge: string) => shortEdge(surface, edge, say);
  const told = new Set(
    zone.found.flatMap(({ edge = '', cuts }) => cuts.map((cut) => `${nameOf(edge)} ${cut}`)),
  );
  const open = new Map<string, Set<number>>();
  for (const { edge, cut } of cutEdges(surface, zone)) {
    const name = nameOf(edge);
    if (told.has(`${name} ${cut}`)) continue;
    open.set(name, (open.get(name) ?? new Set()).add(cut));
  }
  return [...open].map(([name, cuts]) => `${name} ${[...cuts].sort((a, b) => a - b).join(', ')}`).join(' · ');
}

/** Every cut of a zone with each straight edge of the room that cuts it; round things are measured by their own cuts, and folds and soft joints are no faces. */
function cutEdges({ pieces, edges, obstacles }: PacketSurface, zone: Zone) {
  const own = new Set(zone.pieces);
  const round = new Set(obstacles.filter(({ circle }) => circle).map(({ name }) => name));
  const standing = obstacles.map(({ name }) => name).filter((name) => !round.has(name));
  const isFace = (id: string) =>
    edges.some((edge) => edge.id === id) || standing.some((name) => id === name || id.startsWith(`${name}:`));
  return pieces.flatMap((piece) => {
    const { cut } = piece;
    if (cut === null || piece.border || !own.has(piece.id)) return [];
    return piece.edges.filter(isFace).map((edge) => ({ edge, cut }));
  });
}
