import { drawSwatch, looksOfTiles } from '../drawing/index.ts';
import type { PacketPiece, PacketSurface } from '../packet/Packet.ts';
import type { SheetContext } from './SheetContext.ts';

/** A tile of a pattern as a plan draws it: its look, its name in the job, and how many of the pieces are of it. */
export interface TileKey {
  readonly look: string;
  readonly name: string;
  readonly svg: string;
  readonly count: number;
}

/** A line of the key for each tile among the pieces; none where a pattern has one tile only, which is white. */
export function tileKey(
  { packet }: SheetContext,
  surface: PacketSurface,
  pieces: readonly PacketPiece[],
  id: string,
): readonly TileKey[] {
  const looks = looksOfTiles(surface);
  if (looks.size < 2) return [];
  return [...looks].flatMap(([key, look]) => {
    const count = pieces.filter(({ tile }) => tile === key).length;
    if (count === 0) return [];
    const name = packet.spec.tiles.find((tile) => tile.key === key)?.name ?? key;
    return [{ look, name, count, svg: drawSwatch(look, { id: `tile-${id}-${look}`, label: name }).svg }];
  });
}
