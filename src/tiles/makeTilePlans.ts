import type { CutKind, Cuts } from '../cuts/Cut.ts';
import { isInsideCut } from '../cuts/isInsideCut.ts';
import type { Job, TileSpec } from '../job/Job.ts';
import type { Layout } from '../layout/Layout.ts';
import { breaking, type SawnAs, SMALL_PILE_COSTS, SPARE_PER_INSIDE_CUT } from '../trade/index.ts';
import type { CutClass } from './CutClass.ts';
import { cutClasses } from './cutClasses.ts';
import { type FewestTiles, fewestTiles } from './fewestTiles.ts';
import { nameTiles, type ServedKind } from './nameTiles.ts';
import { nearMates } from './nearMates.ts';
import { pileOf } from './pileOf.ts';
import { smallestPile } from './smallestPile.ts';
import type { TilePlan } from './TilePlan.ts';
import { tilePrices } from './tilePrices.ts';
import { tileRules } from './tileRules.ts';
import { workOrder } from './workOrder.ts';

/**
 * For each kind of tile that is laid: how many tiles, which piece comes out of which, and how many to buy.
 *
 * @param layouts one a surface, with `cutsOf` in the same order.
 * @param setIn names of the pieces of each surface in the order in which they are set; as they stand in the layout unless told.
 * @returns plans by the tile's key in the job file.
 */
export function makeTilePlans(
  job: Job,
  layouts: readonly Layout[],
  cutsOf: readonly Cuts[],
  setIn: readonly (readonly string[])[] = layouts.map(({ pieces }) => pieces.map(({ id }) => id)),
): Record<string, TilePlan> {
  const names = layouts.flatMap(({ surface }, i) =>
    setIn[i]!.map((id) => (layouts.length > 1 ? `${surface}:${id}` : id)),
  );
  const plans = job.tiles.flatMap((tile) => {
    const whole = layouts.reduce(
      (sum, { pieces }) => sum + pieces.filter((piece) => piece.whole && piece.tile === tile.key).length,
      0,
    );
    const classes = cutClasses(tile, layouts, cutsOf);
    if (whole + classes.length === 0) return [];
    return [planOf(job, tile, whole, classes, names)];
  });
  const named = nameTiles(plans, names);
  return Object.fromEntries(plans.map(({ plan }, i) => [plan.tile, { ...plan, from: named[i]! }]));
}

/** What is planned for one kind of tile: its tiles have no number yet. */
interface Unnamed extends ServedKind {
  readonly plan: Omit<TilePlan, 'from'>;
}

function planOf(
  job: Job,
  tile: TileSpec,
  whole: number,
  classes: readonly CutClass[],
  names: readonly string[],
): Unnamed {
  const cut = classes.reduce((sum, { pieces }) => sum + pieces.length, 0);
  const { fewest, plans, tiles } = plansOf(job, whole, classes, names);
  const needed = whole + tiles.length;
  const extra = extraOf(job, classes, whole + cut);
  const buy = Math.max(0, needed + extra.breakage + extra.spare + extra.keep - tile.onHand);
  const bound = whole + fewest.proof.bound;
  const plan = {
    tile: tile.key,
    whole,
    cut,
    needed,
    bound,
    proved: bound === needed,
    prices: tilePrices(classes, fewest.proof),
    pile: pileIn(tiles),
    plans,
    ...extra,
    onHand: tile.onHand,
    buy,
    ...boxesOf(tile, buy),
  };
  return { plan, tiles, classes };
}

const pileIn = (tiles: ServedKind['tiles']) => pileOf(tiles.map((slots) => slots.map(({ when }) => when)));

/** The plan of the fewest tiles, that of the smallest pile, which may be the same, and the tiles of the one that is wished for. */
function plansOf(
  { saw, offcuts }: Job,
  whole: number,
  classes: readonly CutClass[],
  names: readonly string[],
): { fewest: FewestTiles; plans: NonNullable<TilePlan['plans']>; tiles: ServedKind['tiles'] } {
  const rules = tileRules(classes, { kerf: saw.kerf, narrowest: offcuts.narrowest });
  const order = workOrder(classes, names);
  const fewest = fewestTiles(rules);
  const mates = nearMates(rules, fewest.tiles, order);
  // The order of work may lead to as few tiles with a smaller pile.
  const near = smallestPile(rules, order, mates.length, pileIn(mates)) ?? mates;
  const atMost = near.length + shareUp(SMALL_PILE_COSTS.value, whole + near.length);
  const small = smallestPile(rules, order, atMost, pileIn(near)) ?? near;
  const figures = (tiles: ServedKind['tiles']) => ({ needed: whole + tiles.length, pile: pileIn(tiles) });
  return {
    fewest,
    plans: { chosen: offcuts.plan, fewestTiles: figures(near), smallestPile: figures(small) },
    tiles: offcuts.plan === 'fewestTiles' ? near : small,
  };
}

/** Tiles for what breaks, a spare for each cut into a tile, and what the owner keeps. */
function extraOf({ waste }: Job, classes: readonly CutClass[], pieces: number) {
  const counts: Partial<Record<SawnAs, number>> = {};
  for (const { cut, pieces } of classes) {
    const way = sawnAs(cut.kind);
    counts[way] = (counts[way] ?? 0) + pieces.length;
  }
  const inside = classes
    .filter(({ cut }) => isInsideCut(cut))
    .reduce((sum, { pieces }) => sum + pieces.length, 0);
  return {
    breakage: Math.ceil(breaking(counts, waste.breakage) - 1e-9),
    spare: inside * SPARE_PER_INSIDE_CUT.value,
    keep: Math.max(1, shareUp(waste.keep, pieces)),
  };
}

function sawnAs(kind: CutKind): SawnAs {
  return kind === 'rip' || kind === 'corner' || kind === 'taper' ? 'straight' : kind;
}

/** Whole boxes, which all come from one lot; none where the box is not known. */
function boxesOf({ box }: TileSpec, buy: number): Pick<TilePlan, 'boxes' | 'over' | 'price'> {
  if (!box) return { boxes: 0, over: 0 };
  const boxes = Math.ceil(buy / box.pieces);
  const counts = { boxes, over: boxes * box.pieces - buy };
  return box.price === undefined ? counts : { ...counts, price: boxes * box.price };
}

/** A share of a count, up to whole tiles; 0.07 × 100 is 7, whatever binary makes of it. */
function shareUp(share: number, count: number): number {
  return Math.ceil(share * count - 1e-9);
}
