import { costOf, type Prices } from './Prices.ts';
import { richestTiles } from './richestTiles.ts';
import type { TileRules } from './tileRules.ts';

/** Prices in whole parts of a tile, so that no tile holds more than `over` of them; and what all pieces then cost in tiles. */
export interface Proof {
  readonly prices: Prices;
  readonly over: number;
  readonly bound: number;
}

/** Parts of a tile that prices are tried in: few first, since they are easier to add up. */
const PARTS = [
  1, 2, 3, 4, 5, 6, 8, 10, 12, 16, 20, 24, 30, 36, 48, 60, 120, 240, 360, 720, 2520, 10080, 100800,
];

/** The best proof in whole numbers that prices in fractions lead to; each is held against every tile before it counts. */
export function priceList(
  rules: TileRules,
  counts: readonly number[],
  found: Prices,
  steps: { left: number },
): Proof {
  const goal = Math.ceil(costOf(found, counts) - 0.002);
  let [best, proved] = [byArea(rules, counts), false];
  for (const over of PARTS) {
    const whole = (price: number) => Math.floor(price * over + 1e-4);
    const groups = found.groups
      .map(({ of, price }) => ({ of, price: whole(price) }))
      .filter(({ price }) => price > 0);
    const prices = { each: found.each.map(whole), groups };
    const bound = Math.ceil(costOf(prices, counts) / over);
    if (bound < best.bound || (bound === best.bound && proved)) continue;
    const dearer = richestTiles(rules, { prices, counts, above: over, by: 'bound', steps });
    if (!dearer.complete) return best;
    if (dearer.tiles.length > 0) continue;
    [best, proved] = [{ prices, over, bound }, true];
    if (bound >= goal) return best;
  }
  return best;
}

/** A proof that needs no search: pieces of one tile need no more area together than it has. */
function byArea({ needs, room }: TileRules, counts: readonly number[]): Proof {
  const over = 10_000;
  const prices = { each: needs.map((need) => Math.floor((need / room) * over)), groups: [] };
  return { prices, over, bound: Math.ceil(costOf(prices, counts) / over) };
}
