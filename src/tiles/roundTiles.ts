import { type Budget, relaxedTiles, type Tile } from './relaxedTiles.ts';
import { shareTiles } from './shareTiles.ts';
import type { TileRules } from './tileRules.ts';

/**
 * Rounds the programme's answer to whole tiles: takes what it has whole, or else the tile it has most of, and solves it anew for
 * what is left, until the rule of the largest piece first does with no more than the bound.
 *
 * @returns fewer than `enough` tiles, or nothing.
 */
export function roundTiles(
  rules: TileRules,
  counts: readonly number[],
  begin: readonly Tile[],
  enough: number,
  bound: number,
  budget: Budget,
): readonly Tile[] | undefined {
  const left = [...counts];
  const tiles: Tile[] = [];
  let known: readonly Tile[] = begin.filter(rules.partsAll);
  const take = (tile: Tile) => tiles.push(tile.filter(({ of }) => left[of.id]! > 0 && left[of.id]!-- > 0));
  while (left.some((count) => count > 0)) {
    const rest = shareTiles(rules, left);
    if (tiles.length + rest.length <= bound) return [...tiles, ...rest];
    const relaxed = relaxedTiles(rules, { counts: left, groups: [], by: 'plan', begin: known }, budget);
    known = relaxed.known;
    const sum = relaxed.taken.reduce((total, { amount }) => total + amount, 0);
    if (relaxed.taken.length === 0 || tiles.length + Math.ceil(sum - 0.02) >= enough) return undefined;
    const whole = relaxed.taken.filter(({ amount }) => amount >= 0.99);
    for (const { tile, amount } of whole) for (let i = 0; i < Math.floor(amount + 0.01); i++) take(tile);
    if (whole.length === 0) take(relaxed.taken.reduce((a, b) => (b.amount > a.amount + 1e-3 ? b : a)).tile);
  }
  return tiles.length < enough ? tiles : undefined;
}
