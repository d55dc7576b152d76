import type { PatternAlong } from '../job/Job.ts';
import type { PacketSurface } from '../packet/Packet.ts';
import { edgeWords, endWords } from './edgeWords.ts';
import type { Say } from './SheetView.ts';

/** The wall or line that a pattern is square to, in words. */
export function lineWords(surface: PacketSurface, along: PatternAlong, say: Say): string {
  if (typeof along === 'string') return edgeWords(surface, along, say);
  if (along.kind === 'shared') return say('line.shared', { wall: edgeWords(surface, along.near, say) });
  return say('line.sight', {
    from: placeWords(surface, along.from, say),
    to: placeWords(surface, along.to, say),
  });
}

/** An end of a line from place to place: a corner, or the middle of what has that name. */
export function placeWords(surface: PacketSurface, name: string, say: Say): string {
  const isCorner = surface.adjustment.corners.some((corner) => corner.name === name);
  return isCorner ? endWords(surface, name, say) : say('line.middle', { name });
}
