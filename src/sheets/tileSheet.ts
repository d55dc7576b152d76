import type { CutTile } from '../tiles/TilePlan.ts';
import type { Sheet } from './Sheet.ts';
import type { SheetContext } from './SheetContext.ts';

/** Which pieces come out of which tile: equal tiles once, with a count. */
export const tileSheet: Sheet = {
  name: 'tile-sheet',
  for: 'setter',
  bundles: ['office', 'packet'],
  speaks: 'crew',
  make: (context) => {
    const groups = Object.values(context.packet.tiles).flatMap((plan) => tileGroups(context, plan.from));
    return groups.length === 0 ? [] : [{ data: { groups } }];
  },
};

/** Tiles that give the same cuts are one line. */
function tileGroups(_context: SheetContext, tiles: readonly CutTile[]) {
  const groups = new Map<string, CutTile[]>();
  for (const tile of tiles) {
    const key = tile.pieces
      .map((piece) => piece.cut)
      .sort((a, b) => a - b)
      .join(' ');
    groups.set(key, [...(groups.get(key) ?? []), tile]);
  }
  return [...groups.values()].map((group) => ({
    count: group.length,
    cuts: group[0]!.pieces.map((piece) => piece.cut),
    tiles: group.map((tile) => ({
      tile: tile.tile,
      pieces: tile.pieces.map((piece) => piece.piece).join(' + '),
    })),
    shared: group[0]!.pieces.length > 1,
  }));
}
