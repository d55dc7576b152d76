import type { PacketPiece, PacketSurface } from '../packet/Packet.ts';
import type { Zone } from '../zones/Zone.ts';
import type { Box } from './boxes.ts';
import type { Mark } from './Mark.ts';
import { markBounds } from './markBounds.ts';
import { movementMarks } from './movementMarks.ts';
import { hardCutsOf, lookOf, pieceArea } from './pieceMarks.ts';
import { obstacleMarks, wallMarks } from './roomMarks.ts';
import type { Scale } from './Scale.ts';
import { seamMarks } from './seamMarks.ts';
import { tileAreas } from './tileAreas.ts';

export function zonePieces({ pieces }: PacketSurface, zone: Zone): readonly PacketPiece[] {
  const own = new Set(zone.pieces);
  return pieces.filter(({ id }) => own.has(id));
}

/** A zone without any words: its pieces by their look, the first outlined heavily, and the room round them. */
export function zoneMarks(surface: PacketSurface, zone: Zone, scale: Scale): readonly Mark[] {
  const pieces = zonePieces(surface, zone);
  const hard = hardCutsOf(surface);
  return [
    ...pieces.map((piece) => pieceArea(piece, surface, scale, lookOf(piece, hard))),
    ...tileAreas(pieces, surface, scale),
    ...pieces
      .filter(({ id }) => id === zone.first)
      .map((piece) => pieceArea(piece, surface, scale, { line: 'thick' })),
    ...obstacleMarks(surface, scale),
    ...wallMarks(surface, scale),
    ...movementMarks(surface, scale),
    ...seamMarks(surface, scale),
  ];
}

/** Boxes of the shafts of arrows among whole marks, so that no name is written over them. */
export function shafts(marks: readonly Mark[]): readonly Box[] {
  const thick = marks.filter((mark) => mark.mark === 'path' && mark.line === 'thick');
  return thick.map((mark) => markBounds([mark]));
}
