import type { Layout } from '../../../src/layout/Layout.ts';
import type { TilePlan } from '../../../src/tiles/TilePlan.ts';

/**
 * Lays a floor piece by piece, with a pile of offcuts beside it, and says what is wrong: a largest pile other than the plan's, tiles
 * not numbered as they are needed, or figures of the two plans that do not belong together. Where other kinds are sawn too,
 * `numbers` are those that this kind's tiles have, rising.
 */
export function judgePile(
  { pieces }: Pick<Layout, 'pieces'>,
  plan: TilePlan,
  numbers: readonly string[] = plan.from.map((_, i) => `T${i + 1}`),
): string[] {
  const { fewestTiles: fewest, smallestPile: small, chosen } = plan.plans!;
  const own = chosen === 'fewestTiles' ? fewest : small;
  const { pile, opened } = laid(pieces, plan);
  const told: readonly (readonly [boolean, string])[] = [
    [pile === plan.pile && pile === own.pile, `the pile is ${pile}, not ${plan.pile}`],
    [opened.every((tile, i) => tile === numbers[i]), 'tiles are not numbered as they are needed'],
    [plan.needed === own.needed, 'the plan is another than the one chosen'],
    [small.pile <= fewest.pile, 'the smallest pile is larger than another'],
    [fewest.needed <= small.needed, 'the fewest tiles are more than others'],
    [small.needed <= fewest.needed + Math.ceil(fewest.needed / 100), 'a smaller pile costs over 1 %'],
  ];
  return told.flatMap(([holds, fault]) => (holds ? [] : [fault]));
}

function laid(pieces: Layout['pieces'], { from }: TilePlan) {
  const tileOf = new Map(from.flatMap((tile) => tile.pieces.map(({ piece }) => [piece, tile] as const)));
  const left = new Map<string, number>();
  const opened: string[] = [];
  let pile = 0;
  for (const { id } of pieces) {
    const tile = tileOf.get(id);
    if (!tile) continue;
    if (!left.has(tile.tile)) opened.push(tile.tile);
    left.set(tile.tile, (left.get(tile.tile) ?? tile.pieces.length) - 1);
    pile = Math.max(pile, [...left.values()].filter((count) => count > 0).length);
  }
  return { pile, opened };
}
