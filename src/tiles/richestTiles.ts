import type { Placement } from './CutClass.ts';
import type { Prices } from './Prices.ts';
import type { TileRules } from './tileRules.ts';

export interface Search {
  readonly prices: Prices;
  /** How many of each class may come out of one tile. */
  readonly counts: readonly number[];
  /** Only tiles worth more than this count. */
  readonly above: number;
  /** `bound`: what any cut at all could part; `plan`: what the saw can part. */
  readonly by: 'bound' | 'plan';
  /** Steps that the search may still take. */
  readonly steps: { left: number };
}

/** A class of the search: what it needs, and what it adds to a tile at most. */
interface Ranked {
  readonly id: number;
  readonly price: number;
  readonly most: number;
  readonly need: number;
  readonly groups: readonly number[];
  /** Its ways as choices. */
  readonly choices: readonly Choice[];
}

interface Choice {
  readonly one: Ranked;
  readonly at: Placement;
}

/**
 * For each class, if there is one worth more than asked, the tile worth most of those that hold it and no class before it, the
 * dearest being first. All tiles are looked at but those that cannot be worth it: no two pieces have the same corner of the tile,
 * and together they need no more area than it has. Where the steps ran out `complete` is false, and dearer tiles may exist.
 */
export function richestTiles(
  rules: TileRules,
  search: Search,
): { tiles: readonly (readonly Placement[])[]; complete: boolean } {
  const ranked = rankedBy(rules, search);
  const tiles = ranked.flatMap((first, rank) => {
    const found = search.steps.left > 0 ? richestFrom(rules, search, first, ranked.slice(rank)) : undefined;
    return found ? [found] : [];
  });
  return { tiles, complete: search.steps.left > 0 };
}

function rankedBy({ classes, ways, needs }: TileRules, { prices }: Search): Ranked[] {
  const groupsOf = classes.map((): number[] => []);
  for (const [i, { of, price }] of prices.groups.entries())
    if (price > 0) for (const id of of) groupsOf[id]!.push(i);
  return classes
    .map(({ id }): Ranked => {
      const groups = groupsOf[id]!;
      const price = prices.each[id]!;
      const most = groups.reduce((sum, group) => sum + prices.groups[group]!.price, price);
      const choices: Choice[] = [];
      const one: Ranked = { id, price, most, need: needs[id]!, groups, choices };
      for (const at of ways[id]!) choices.push({ one, at });
      return one;
    })
    .filter(({ most }) => most > 0)
    .sort((a, b) => b.most - a.most || b.need - a.need || a.id - b.id);
}

/** Grows a tile from its first piece, which stays unturned: turning a whole tile changes nothing. */
function richestFrom(
  rules: TileRules,
  search: Search,
  first: Ranked,
  from: readonly Ranked[],
): readonly Placement[] | undefined {
  const { prices, counts, by, steps } = search;
  const [fits, allFit] =
    by === 'bound' ? [rules.mayPartTwo, rules.mayPartAll] : [rules.partsTwo, rules.partsAll];
  const held = prices.groups.map(() => 0);
  const chosen: Choice[] = [];
  let [best, most]: [readonly Placement[] | undefined, number] = [undefined, search.above];
  const begin = first.choices[0]!;

  /** What stands with a new piece, of the choices from `index` on. */
  const goWith = (choices: readonly Choice[], index: number, room: number): Choice[] => {
    const next = choices[index]!;
    const used = chosen.filter(({ one }) => one === next.one).length;
    return choices.slice(next.at.corners === 0 ? index : index + 1).filter(({ one, at }) => {
      steps.left -= 0.1;
      return one.need <= room && (one !== next.one || used < counts[one.id]!) && fits(next.at, at);
    });
  };
  const add = (next: Choice, worth: number, room: number, rest: (room: number) => readonly Choice[]) => {
    const { price, groups, need } = next.one;
    const gained = groups.reduce(
      (sum, group) => (held[group]! % 2 === 0 ? sum + prices.groups[group]!.price : sum),
      price,
    );
    chosen.push(next);
    for (const group of groups) held[group]!++;
    visit(worth + gained, room - need, rest(room - need));
    for (const group of groups) held[group]!--;
    chosen.pop();
  };
  const visit = (worth: number, room: number, offered: readonly Choice[]) => {
    steps.left--;
    if (by === 'plan' && chosen.length > 2 && !allFit(chosen.map(({ at }) => at))) return;
    if (worth > most) [best, most] = [chosen.map(({ at }) => at), worth];
    if (steps.left <= 0 || worth + couldAdd(offered, 0, room) <= most) return;
    const choices = by === 'plan' ? offered : fitting(offered, chosen, allFit);
    for (let i = 0; i < choices.length; i++) {
      if (steps.left <= 0 || worth + couldAdd(choices, i, room) <= most) return;
      add(choices[i]!, worth, room, (left) => goWith(choices, i, left));
    }
  };
  const left = rules.room - first.need;
  const beside = from.filter((one) => one.need <= left && (one !== first || counts[one.id]! > 1));
  const densest = beside.reduce((dense, one) => Math.max(dense, one.most / one.need), 0);
  if (first.most + densest * left <= most) return best;
  add(begin, 0, rules.room, () =>
    beside.flatMap(({ choices }) => choices.filter(({ at }) => fits(begin.at, at))),
  );
  return best;
}

/** Of the choices those that fit with all that is chosen: what does not, fits no better with more beside it. */
function fitting(
  choices: readonly Choice[],
  chosen: readonly Choice[],
  allFit: TileRules['mayPartAll'],
): readonly Choice[] {
  if (chosen.length < 2) return choices;
  const placements = chosen.map(({ at }) => at);
  return choices.filter(({ at }) => allFit([...placements, at]));
}

/** No choices from here on add more: one a corner of the tile, others as their area lets them; nor more than the area could. */
function couldAdd(choices: readonly Choice[], from: number, room: number): number {
  const corner = [0, 0, 0, 0, 0, 0, 0, 0];
  let [loose, dense] = [0, 0];
  for (let i = from; i < choices.length; i++) {
    const { one, at } = choices[i]!;
    if (one.need > room) continue;
    dense = Math.max(dense, one.most / one.need);
    const lowest = 31 - Math.clz32(at.corners & -at.corners);
    if (lowest < 0) loose = Math.max(loose, one.most / one.need);
    else corner[lowest] = Math.max(corner[lowest]!, one.most);
  }
  return Math.min(dense * room, corner.reduce((sum, one) => sum + one, 0) + loose * room);
}
