import type { PacketPiece } from '../packet/Packet.ts';
import type { Zone } from '../zones/Zone.ts';
import { type PieceNames, pieceNames } from './pieceNames.ts';
import type { NameGround, PlacedNames } from './placeNames.ts';
import type { Scale } from './Scale.ts';

/** The pieces of a zone that its words name: the first, the last, and where what the first shuts off is begun. */
export function endsOf({ first, last, beyond }: Zone): readonly string[] {
  return [first, last, ...(beyond === undefined ? [] : [beyond])];
}

/** What is to be written on a zone's pieces: names and cut numbers, those that its words name in bold. */
export function zoneNames(
  pieces: readonly PacketPiece[],
  zone: Zone,
  scale: Scale,
  ground: NameGround,
): PieceNames {
  const asked = pieceNames(pieces, scale, true, ground);
  const ends = endsOf(zone);
  return {
    ...asked,
    requests: asked.requests.map((one) => (ends.includes(one.name) ? { ...one, bold: true } : one)),
  };
}

/** Which pieces miss name or cut number, but for those that are told otherwise, and which cut ones bear them neither themselves nor close by. */
export function namedWhere(
  pieces: readonly PacketPiece[],
  { unplaced, unnumbered, ledFar }: PlacedNames,
  isTold: (piece: PacketPiece) => boolean = () => false,
) {
  const open = new Set([...unplaced, ...unnumbered]);
  const off = new Set([...open, ...ledFar]);
  const names = (wanted: (piece: PacketPiece) => boolean) => pieces.filter(wanted).map(({ id }) => id);
  return {
    unnamed: names((piece) => open.has(piece.id) && !isTold(piece)),
    aside: names(({ id, cut }) => cut !== null && off.has(id)),
  };
}
