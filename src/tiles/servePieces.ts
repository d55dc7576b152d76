import type { Tile } from './relaxedTiles.ts';
import type { ServedTile } from './ServedTile.ts';
import type { WorkOrder } from './workOrder.ts';

/** Gives each place in the tiles a piece of its class, in the order of the pieces. */
export function servePieces(tiles: readonly Tile[], order: WorkOrder): ServedTile[] {
  const served = new Map<number, number>();
  return tiles.map((placements) =>
    placements.map((at) => {
      const which = served.get(at.of.id) ?? 0;
      served.set(at.of.id, which + 1);
      return { at, which, when: order[at.of.id]![which]! };
    }),
  );
}
