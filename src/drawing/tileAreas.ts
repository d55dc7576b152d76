import { tilesLaid } from '../layout/tilesLaid.ts';
import type { PacketPiece, PacketSurface } from '../packet/Packet.ts';
import type { HatchName } from './hatches.ts';
import type { AreaMark } from './Mark.ts';
import { pieceArea } from './pieceMarks.ts';
import type { Scale } from './Scale.ts';

/** Looks of the tiles of a floor, those of its pattern first; a seventh begins anew, and its size tells it apart. */
export const tileLooks = ['first', 'second', 'third', 'fourth', 'fifth', 'sixth'] as const;

export type TileLook = (typeof tileLooks)[number];

/** The tiles of a surface's pattern and border by their keys, each with its look: the first is white. */
export function looksOfTiles(
  surface: Pick<PacketSurface, 'pattern' | 'border'>,
): ReadonlyMap<string, TileLook> {
  return new Map(tilesLaid(surface).map((key, i) => [key, tileLooks[i % tileLooks.length]!]));
}

/** What tells pieces of one tile from those of another: hatches without outlines, to lie under or over those of cuts. */
export function tileAreas(
  pieces: readonly (Pick<PacketPiece, 'fullTile' | 'shape'> & Partial<Pick<PacketPiece, 'tile'>>)[],
  surface: PacketSurface,
  scale: Scale,
): readonly AreaMark[] {
  const looks = looksOfTiles(surface);
  return pieces.flatMap((piece) => {
    const look = piece.tile === undefined ? undefined : looks.get(piece.tile);
    if (look === undefined || look === 'first') return [];
    const fill: HatchName = look;
    return [{ mark: 'area', rings: pieceArea(piece, surface, scale, {}).rings, fill }];
  });
}
