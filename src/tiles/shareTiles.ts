import type { Placement } from './CutClass.ts';
import type { TileRules } from './tileRules.ts';

interface OpenTile {
  readonly placements: Placement[];
  /** Of its area, where each piece takes half a kerf all round. */
  left: number;
}

/**
 * Tiles for the pieces: the largest piece first, each into the fullest tile it still fits, else into a new one.
 *
 * A piece keeps its own place in its tile, so that its factory edges stay at the joints, turned and slid only as they allow.
 * Pieces share a tile only where straight cuts part them with the kerf between.
 *
 * @param counts how many pieces of each class.
 */
export function shareTiles(rules: TileRules, counts: readonly number[]): Placement[][] {
  const queue = [...rules.classes].sort((a, b) => b.area - a.area || a.id - b.id);
  const done: OpenTile[] = [];
  for (const of of queue) {
    const ways = rules.ways[of.id]!;
    for (let i = 0; i < counts[of.id]!; i++) {
      const found = bestTile(rules, done, ways, rules.needs[of.id]!);
      const tile = found?.tile ?? { placements: [], left: rules.room };
      if (!found) done.push(tile);
      tile.placements.push(found?.way ?? ways[0]!);
      tile.left -= rules.needs[of.id]!;
    }
  }
  return done.map(({ placements }) => placements);
}

function bestTile(rules: TileRules, tiles: readonly OpenTile[], ways: readonly Placement[], needs: number) {
  let best: { tile: OpenTile; way: Placement } | undefined;
  for (const tile of tiles) {
    if (tile.left < needs || (best && tile.left >= best.tile.left)) continue;
    const way = ways.find((next) => fits(rules, tile.placements, next));
    if (way) best = { tile, way };
  }
  return best;
}

function fits(rules: TileRules, others: readonly Placement[], next: Placement): boolean {
  if (!others.every((other) => rules.partsTwo(other, next))) return false;
  return others.length === 1 || rules.partsAll([...others, next]);
}
