import type { Group } from './Prices.ts';
import type { Relaxed } from './relaxedTiles.ts';

/** A tile that the programme takes, with how often each class comes out of it. */
interface Taken {
  readonly held: ReadonlyMap<number, number>;
  readonly amount: number;
}

/** How many classes a group may gain or lose in the search, and how many groups are kept. */
const CHANGES = 24;
const KEPT = 12;

/**
 * Groups whose pieces are odd in number and that the programme serves by pairs, less than one tile apart: in whole tiles one
 * piece at least is left over. They are searched for from every class on, by the change of one class that leaves least of them
 * in odd numbers.
 */
export function oddGroups({ taken }: Relaxed, counts: readonly number[]): readonly Group[] {
  const tiles = taken.map(({ tile, amount }): Taken => {
    const held = new Map<number, number>();
    for (const { of } of tile) held.set(of.id, (held.get(of.id) ?? 0) + 1);
    return { held, amount };
  });
  const inParts = tiles.filter(({ amount }) => Math.abs(amount - Math.round(amount)) > 0.01);
  const starts = [...new Set(inParts.flatMap(({ held }) => [...held.keys()]))];
  const found = new Map<string, { group: Group; odd: number }>();
  for (const start of starts.slice(0, 200)) {
    for (const one of grownFrom(start, tiles, counts)) found.set(one.group.join(), one);
  }
  return [...found.values()]
    .sort((a, b) => a.odd - b.odd || a.group.length - b.group.length)
    .slice(0, KEPT)
    .map(({ group }) => group);
}

function grownFrom(start: number, tiles: readonly Taken[], counts: readonly number[]) {
  const group = new Set([start]);
  const tried = new Set([start]);
  const found: { group: Group; odd: number }[] = [];
  for (let change = 0; change < CHANGES; change++) {
    const odd = oddIn(group, tiles);
    const pieces = [...group].reduce((sum, id) => sum + counts[id]!, 0);
    if (pieces % 2 === 1 && odd < 0.98) found.push({ group: [...group].sort((a, b) => a - b), odd });
    const next = bestChange(group, tried, tiles);
    if (next === undefined) break;
    tried.add(next);
    if (!group.delete(next)) group.add(next);
  }
  return found;
}

function bestChange(
  group: ReadonlySet<number>,
  tried: ReadonlySet<number>,
  tiles: readonly Taken[],
): number | undefined {
  const near = tiles.filter((tile) => isOdd(tile, group)).flatMap(({ held }) => [...held.keys()]);
  let [best, least]: [number | undefined, number] = [undefined, Number.POSITIVE_INFINITY];
  for (const id of new Set(near)) {
    if (tried.has(id)) continue;
    const changed = new Set(group);
    if (!changed.delete(id)) changed.add(id);
    const odd = oddIn(changed, tiles);
    if (odd < least - 1e-6) [best, least] = [id, odd];
  }
  return best;
}

/** How many of the tiles taken hold an odd number of a group's pieces. */
function oddIn(group: ReadonlySet<number>, tiles: readonly Taken[]): number {
  return tiles.reduce((sum, tile) => (isOdd(tile, group) ? sum + tile.amount : sum), 0);
}

function isOdd({ held }: Taken, group: ReadonlySet<number>): boolean {
  let count = 0;
  for (const [id, times] of held) if (group.has(id)) count += times;
  return count % 2 === 1;
}
