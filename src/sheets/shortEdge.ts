import type { PacketSurface } from '../packet/Packet.ts';
import { edgeWords } from './edgeWords.ts';
import type { Say } from './SheetView.ts';

/** In a narrow column the bare name of what stands there; which of its faces is meant shows in the plan, but of both sides of a doorway, between which one row runs. */
export function shortEdge(surface: PacketSurface, id: string, say: Say): string {
  const [name = '', part] = id.split(':');
  if (part === 'left' || part === 'right') return say('sheet.zone.doorSide', { name, side: part });
  const known = [...surface.obstacles, ...surface.openings].some((one) => one.name === name);
  return known ? name : edgeWords(surface, id, say);
}
