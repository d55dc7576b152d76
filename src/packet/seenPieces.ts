import type { Piece } from '../layout/Layout.ts';

/** A piece as far as it takes to show a layout: a packet keeps no more of a layout that is not laid. Older packets do not tell its tile. */
export type SeenPiece = Pick<Piece, 'whole' | 'fullTile' | 'shape' | 'seen' | 'share' | 'border'> &
  Partial<Pick<Piece, 'tile'>>;

/** The pieces of a layout as far as it takes to show it. */
export function seenPieces(pieces: readonly Piece[]): readonly SeenPiece[] {
  return pieces.map(({ tile, whole, fullTile, shape, seen, share, border }) => ({
    tile,
    whole,
    fullTile,
    shape,
    seen,
    share,
    ...(border && { border }),
  }));
}
