import type { CutKind, Cuts } from '../cuts/Cut.ts';
import type { Job, TileSpec } from '../job/Job.ts';
import type { Layout } from '../layout/Layout.ts';
import { SPARE_PER_HARD_CUT } from '../trade/index.ts';
import type { CutClass } from './CutClass.ts';
import { cutClasses } from './cutClasses.ts';
import { fewestTiles } from './fewestTiles.ts';
import { servePieces } from './servePieces.ts';
import type { TilePlan } from './TilePlan.ts';
import { tilePrices } from './tilePrices.ts';

/** Cuts inside a tile: they break more easily than others, so each has a spare. */
const INSIDE: ReadonlySet<CutKind> = new Set<CutKind>(['notch', 'u', 'hole', 'curve']);

/**
 * For each kind of tile that is laid: how many tiles, which piece comes out of which, and how many to buy.
 *
 * @param layouts one a surface, with `cutsOf` in the same order.
 * @returns plans by the tile's key in the job file.
 */
export function makeTilePlans(
  job: Job,
  layouts: readonly Layout[],
  cutsOf: readonly Cuts[],
): Record<string, TilePlan> {
  const plans = job.tiles.flatMap((tile) => {
    const whole = layouts.reduce(
      (sum, { pieces }) => sum + pieces.filter((piece) => piece.whole && piece.tile === tile.key).length,
      0,
    );
    const classes = cutClasses(tile, layouts, cutsOf);
    return whole + classes.length === 0 ? [] : [[tile.key, planOf(job, tile, whole, classes)] as const];
  });
  return Object.fromEntries(plans);
}

function planOf(job: Job, tile: TileSpec, whole: number, classes: readonly CutClass[]): TilePlan {
  const cut = classes.reduce((sum, { pieces }) => sum + pieces.length, 0);
  const inside = classes
    .filter((one) => INSIDE.has(one.cut.kind))
    .reduce((sum, { pieces }) => sum + pieces.length, 0);
  const fewest = fewestTiles(classes, job.saw.kerf);
  const from = servePieces(fewest.tiles);
  const needed = whole + from.length;
  const breakage = shareUp(job.waste.breakage, cut);
  const spare = inside * SPARE_PER_HARD_CUT.value;
  const keep = Math.max(1, shareUp(job.waste.keep, whole + cut));
  const buy = Math.max(0, needed + breakage + spare + keep - tile.onHand);
  const bound = whole + fewest.proof.bound;
  return {
    tile: tile.key,
    whole,
    cut,
    needed,
    bound,
    proved: bound === needed,
    prices: tilePrices(classes, fewest.proof),
    from,
    breakage,
    spare,
    keep,
    onHand: tile.onHand,
    buy,
    ...boxesOf(tile, buy),
  };
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
