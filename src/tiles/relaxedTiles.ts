import type { Placement } from './CutClass.ts';
import { coverProgram } from './coverProgram.ts';
import type { Group, Prices } from './Prices.ts';
import { richestTiles } from './richestTiles.ts';
import type { TileRules } from './tileRules.ts';

export type Tile = readonly Placement[];

/** What work may still be done, counted so that the answer is the same on every machine. */
export interface Budget {
  readonly pivots: { left: number };
  readonly steps: { left: number };
}

/** What tiles would do where parts of a tile count. */
export interface Relaxed {
  readonly prices: Prices;
  readonly taken: readonly { readonly tile: Tile; readonly amount: number }[];
  /** All tiles that were thought of. */
  readonly known: readonly Tile[];
}

/** Solves the programme of covering, with tiles looked for by the prices it gives until none is worth more than it costs. */
export function relaxedTiles(
  rules: TileRules,
  asked: {
    counts: readonly number[];
    groups: readonly Group[];
    by: 'bound' | 'plan';
    begin: readonly Tile[];
  },
  budget: Budget,
): Relaxed {
  const { counts, groups, by, begin } = asked;
  const program = coverProgram(counts, groups);
  const known: Tile[] = counts.map((_, id) => [rules.ways[id]![0]!]);
  const keys = new Set<string>();
  const add = (tile: Tile): boolean => {
    const ids = tile.map(({ of }) => of.id).sort((a, b) => a - b);
    if (ids.length < 2 || keys.has(ids.join())) return false;
    keys.add(ids.join());
    program.add(ids);
    known.push(tile);
    return true;
  };
  for (const tile of begin) add(tile);
  let fresh = true;
  while (fresh && budget.pivots.left > 0 && budget.steps.left > 0) {
    program.solve(budget.pivots);
    const search = { prices: program.prices(), counts, above: 1 + 1e-6, by, steps: budget.steps };
    fresh = richestTiles(rules, search).tiles.map(add).some(Boolean);
  }
  const taken = program.taken().map(({ column, amount }) => ({ tile: known[column]!, amount }));
  return { prices: program.prices(), taken, known };
}
