import { turnOffset } from '../cuts/TileBox.ts';
import type { Placement } from './CutClass.ts';
import type { CutTile } from './TilePlan.ts';

/** Numbers the tiles and gives each place in them a piece of its class, in the order of the pieces. */
export function servePieces(tiles: readonly (readonly Placement[])[]): CutTile[] {
  const served = new Map<number, number>();
  return tiles.map((placements, i) => ({
    tile: `T${i + 1}`,
    pieces: placements.map(({ of, turn, slid }) => {
      const next = served.get(of.id) ?? 0;
      served.set(of.id, next + 1);
      const [x, y] = turnOffset(turn, of.box);
      return { piece: of.pieces[next]!, cut: of.cut.number, at: [x + slid[0], y + slid[1]], turn };
    }),
  }));
}
