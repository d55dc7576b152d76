import { turnOffset } from '../cuts/TileBox.ts';
import type { Ticks } from '../measure/index.ts';
import type { CutClass, Placement } from './CutClass.ts';
import { placementsOf } from './placementsOf.ts';
import { sawsApart } from './sawsApart.ts';
import type { CutTile } from './TilePlan.ts';

interface OpenTile {
  readonly pieces: { readonly piece: string; readonly placement: Placement }[];
  corners: number;
  left: number;
}

/**
 * Which tile each cut piece comes from: the largest piece first, each into the fullest tile it still fits, else into a new one.
 *
 * A piece keeps its own place in its tile, so that its factory edges stay at the joints, turned only as the tile allows. Pieces
 * share a tile only where straight cuts part them with the kerf between.
 */
export function shareTiles(classes: readonly CutClass[], kerf: Ticks): CutTile[] {
  const pairs = new Map<string, boolean>();
  const fits = (tile: OpenTile, next: Placement) => fitsTile(tile, next, kerf, pairs);
  const queue = [...classes].sort((a, b) => b.area - a.area || a.id - b.id);
  const done: OpenTile[] = [];
  for (const of of queue) {
    const placements = placementsOf(of);
    for (const piece of of.pieces) {
      const found = of.shares ? bestTile(done, placements, fits) : undefined;
      const placement = found?.placement ?? placements[0]!;
      const tile = found?.tile ?? newTile(of);
      if (!found) done.push(tile);
      tile.pieces.push({ piece, placement });
      tile.corners |= placement.corners;
      tile.left -= of.area;
    }
  }
  return done.map((tile, i) => ({
    tile: `T${i + 1}`,
    pieces: tile.pieces.map(({ piece, placement: { of, turn } }) => {
      return { piece, cut: of.cut.number, at: turnOffset(turn, of.box), turn };
    }),
  }));
}

function newTile(of: CutClass): OpenTile {
  // A piece that takes a tile for itself leaves nothing to share.
  return { pieces: [], corners: 0, left: of.shares ? of.box.length * of.box.width : of.area };
}

function bestTile(
  tiles: readonly OpenTile[],
  placements: readonly Placement[],
  fits: (tile: OpenTile, next: Placement) => boolean,
): { tile: OpenTile; placement: Placement } | undefined {
  let best: { tile: OpenTile; placement: Placement } | undefined;
  for (const tile of tiles) {
    if (best && tile.left >= best.tile.left) continue;
    const placement = placements.find((next) => fits(tile, next));
    if (placement) best = { tile, placement };
  }
  return best;
}

function fitsTile(tile: OpenTile, next: Placement, kerf: Ticks, pairs: Map<string, boolean>): boolean {
  if (tile.left < next.of.area || (tile.corners & next.corners) !== 0) return false;
  const others = tile.pieces.map(({ placement }) => placement);
  if (!others.every((other) => pairFits(other, next, kerf, pairs))) return false;
  return others.length === 1 || sawsApart([...others.map(({ ring }) => ring), next.ring], kerf);
}

function pairFits(a: Placement, b: Placement, kerf: Ticks, pairs: Map<string, boolean>): boolean {
  const key = `${a.of.id} ${a.turn} ${b.of.id} ${b.turn}`;
  const known = pairs.get(key);
  if (known !== undefined) return known;
  const fits = sawsApart([a.ring, b.ring], kerf);
  pairs.set(key, fits);
  return fits;
}
