import { cornerBetween, lettersOfFace } from '../drawing/index.ts';
import type { PacketSurface } from '../packet/Packet.ts';
import { edgeWords, endWords } from './edgeWords.ts';
import type { Say } from './SheetView.ts';
import { sayKind } from './sayKind.ts';

/** A face on which a mark is made: of what stands in the room by the letters that the set-out gives its corners, else as `edgeWords`. */
export function faceWords(surface: PacketSurface, id: string, say: Say): string {
  const [from, to] = lettersOfFace(surface, id);
  if (!from || !to) return edgeWords(surface, id, say);
  return say('edge.faceOf', { name: sayKind(say, from.thing), from: from.letter, to: to.letter });
}

/** Where the tape is hooked to measure along a face: a lettered corner of what stands in the room, else as `endWords`. */
export function tapeWords(surface: PacketSurface, face: string, end: string, say: Say): string {
  const corner = cornerBetween(surface, face, end);
  if (!corner) return endWords(surface, end, say);
  return say('edge.cornerOf', { name: sayKind(say, corner.thing), letter: corner.letter });
}
