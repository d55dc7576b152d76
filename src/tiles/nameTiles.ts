import type { ServedTile } from './ServedTile.ts';
import type { CutTile } from './TilePlan.ts';
import { turnedBy } from './TileTurn.ts';

/** Numbers the tiles in the order in which they are first needed, on from `before`, and names their pieces. */
export function nameTiles(tiles: readonly ServedTile[], before = 0): CutTile[] {
  const first = (slots: ServedTile) => Math.min(...slots.map(({ when }) => when));
  return [...tiles]
    .sort((a, b) => first(a) - first(b))
    .map((slots, i) => ({
      tile: `T${before + i + 1}`,
      pieces: slots.map(({ at: { of, turn, slid }, which }) => {
        const [x, y] = turnedBy(turn, of.box);
        return { piece: of.pieces[which]!, cut: of.cut.number, at: [x + slid[0], y + slid[1]], turn };
      }),
    }));
}
