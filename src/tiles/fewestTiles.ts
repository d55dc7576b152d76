import { oddGroups } from './oddGroups.ts';
import type { Group } from './Prices.ts';
import { type Proof, priceList } from './priceList.ts';
import { type Budget, type Relaxed, relaxedTiles, type Tile } from './relaxedTiles.ts';
import { roundTiles } from './roundTiles.ts';
import { shareTiles } from './shareTiles.ts';
import type { TileRules } from './tileRules.ts';

/** Tiles for all pieces, and the proof of a number that no plan goes below. */
export interface FewestTiles {
  readonly tiles: readonly Tile[];
  readonly proof: Proof;
}

/** Work for one kind of tile: numbers of the programme's matrix gone through, and tiles looked at, which prices are then held against. */
const PIVOTS = 800_000_000;
const STEPS = 1_000_000;
/** With more kinds of pieces than this no proof is likely; a three-hundredth of the work shows what can be shown. */
const MOST_KINDS = 400;

/**
 * As few tiles as are found for all pieces: by the rule of the largest piece first; where the bound says that fewer might do, by
 * rounding the programme's answer.
 */
export function fewestTiles(rules: TileRules): FewestTiles {
  const counts = rules.classes.map(({ pieces }) => pieces.length);
  const part = counts.length > MOST_KINDS ? 0.003 : 1;
  const budget: Budget = { pivots: { left: PIVOTS * part }, steps: { left: STEPS * part } };
  let tiles: readonly Tile[] = shareTiles(rules, counts);
  const first = relaxedTiles(rules, { counts, groups: [], by: 'bound', begin: tiles }, budget);
  let proof = priceList(rules, counts, first.prices, { left: STEPS * part });
  if (proof.bound < tiles.length) {
    const rounded = roundTiles(rules, counts, first.known, tiles.length, proof.bound, budget);
    if (rounded && rounded.length < tiles.length) tiles = rounded;
  }
  if (proof.bound < tiles.length) proof = sharpened(rules, counts, first, proof, tiles.length, budget);
  return { tiles: tiles.map((tile) => rules.settle(tile) ?? tile), proof };
}

/** Adds groups of odd counts to the programme while they raise the bound, to the number of tiles at most. */
function sharpened(
  rules: TileRules,
  counts: readonly number[],
  first: Relaxed,
  proof: Proof,
  enough: number,
  budget: Budget,
): Proof {
  let [best, relaxed] = [proof, first];
  let groups: readonly Group[] = [];
  for (let round = 0; round < 12 && best.bound < enough; round++) {
    const fresh = oddGroups(relaxed, counts).filter(
      (group) => !groups.some((old) => old.join() === group.join()),
    );
    if (fresh.length === 0) return best;
    groups = [...groups, ...fresh];
    relaxed = relaxedTiles(rules, { counts, groups, by: 'bound', begin: relaxed.known }, budget);
    const next = priceList(rules, counts, relaxed.prices, { left: STEPS });
    if (next.bound > best.bound) best = next;
  }
  return best;
}
