import type { TileSpec } from '../job/Job.ts';
import type { TilePlan } from '../tiles/TilePlan.ts';
import type { Step } from '../trade/index.ts';
import type { Material } from './Material.ts';

/** The tile to buy, from the plan that counts every piece. */
export function tileLine(tile: TileSpec, plan: TilePlan): Material {
  const sum: readonly Step[] = [
    {
      code: 'material.tile.sum.needed',
      figures: { wholeCount: plan.whole, cutCount: plan.cut, tileCount: plan.needed },
    },
    {
      code: 'material.tile.sum.extra',
      figures: { breakageCount: plan.breakage, spareCount: plan.spare, keepCount: plan.keep },
    },
    ...(plan.onHand > 0 ? [{ code: 'material.tile.sum.onHand', figures: { onHandCount: plan.onHand } }] : []),
    { code: 'material.tile.sum.buy', figures: { tileCount: plan.buy } },
    ...(tile.box
      ? [
          {
            code: 'material.tile.sum.boxes',
            figures: { pieceCount: tile.box.pieces, boxCount: plan.boxes, overCount: plan.over },
          },
        ]
      : []),
    { code: 'material.tile.sum.oneLot', figures: {} },
  ];
  return {
    what: 'tile',
    name: tile.name,
    sum,
    rate: { value: tile.box?.pieces ?? 1, unit: tile.box ? 'piecePerBox' : 'piece' },
    mark: 'G',
    source: 'layout',
    amount: plan.needed + plan.breakage + plan.spare + plan.keep,
    unit: 'piece',
    buy: tile.box ? plan.boxes : plan.buy,
    buyUnit: tile.box ? 'box' : 'piece',
  };
}
