import { isHard } from '../cuts/isHard.ts';
import type { PacketSurface } from '../packet/Packet.ts';

/** Pieces of a surface by kind: whole, cut, and the hard ones among the cut. */
export function wholeAndCut(surface: PacketSurface): { whole: number; cut: number; hard: number } {
  const hard = new Set(surface.cuts.filter(isHard).flatMap((cut) => cut.pieces));
  const whole = surface.pieces.filter((piece) => piece.whole).length;
  return { whole, cut: surface.pieces.length - whole, hard: hard.size };
}
