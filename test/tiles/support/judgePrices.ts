import type { TilePlan } from '../../../src/tiles/TilePlan.ts';
import type { ForcedTiles } from './tilesByForce.ts';

/** Adds a price list up again, and says what is wrong: a piece priced twice, a group counted wrong, or a sum that is not the bound. */
export function judgeSum({ whole, bound, prices }: TilePlan): string[] {
  const { each, groups, over } = prices!;
  const named = each.flatMap(({ pieces }) => pieces);
  const pieces = each.reduce((sum, { price, pieces }) => sum + price * pieces.length, 0);
  const parts = groups.reduce((sum, { price, tiles }) => sum + price * tiles, pieces);
  return [
    ...(new Set(named).size === named.length ? [] : ['a piece is priced twice']),
    ...groups.flatMap((group) =>
      group.tiles === Math.ceil(new Set(group.pieces).size / 2) ? [] : ['a group is counted wrong'],
    ),
    ...(whole + Math.ceil(parts / over) === bound
      ? []
      : [`the prices add up to ${whole} + ${parts}/${over}`]),
  ];
}

/** Tiles, found by trying all, that hold more than one tile's worth. */
export function judgePrices({ prices }: TilePlan, { alike, sets }: ForcedTiles): string[] {
  const { each, groups, over } = prices!;
  const priceOf = (piece: string) => each.find(({ pieces }) => pieces.includes(piece))?.price ?? 0;
  // Of pieces that are alike in their tile any may lie in it, so the dearest are taken.
  const dearest = alike.map((names) => [...names].sort((a, b) => priceOf(b) - priceOf(a)));
  return sets.flatMap((set) => {
    const held = set.map(
      (kind, i) => dearest[kind]![set.slice(0, i).filter((other) => other === kind).length]!,
    );
    const single = held.reduce((sum, piece) => sum + priceOf(piece), 0);
    const worth = groups.reduce(
      (sum, { price, pieces }) =>
        sum + price * Math.ceil(held.filter((piece) => pieces.includes(piece)).length / 2),
      single,
    );
    return worth > over ? [`${held.join(' + ')} cost ${worth}/${over}`] : [];
  });
}
