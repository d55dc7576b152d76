/**
 * Classes of which every two in a tile count once, and one left over as well: so many pieces need no fewer tiles than half of
 * them, rounded up.
 */
export type Group = readonly number[];

/** What each class costs, and what each group adds for every two of it, or one left over, in a tile. */
export interface Prices {
  readonly each: readonly number[];
  readonly groups: readonly { readonly of: Group; readonly price: number }[];
}

/** How many tiles a group needs by itself. */
export function pairsOf(group: Group, counts: readonly number[]): number {
  return Math.ceil(group.reduce((sum, of) => sum + counts[of]!, 0) / 2);
}

/** What all pieces cost together. */
export function costOf({ each, groups }: Prices, counts: readonly number[]): number {
  const pieces = each.reduce((sum, price, of) => sum + price * counts[of]!, 0);
  return groups.reduce((sum, { of, price }) => sum + price * pairsOf(of, counts), pieces);
}
