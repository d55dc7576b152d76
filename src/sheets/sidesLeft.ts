import type { Cut } from '../cuts/Cut.ts';
import { bounds, shapeArea } from '../geometry/index.ts';
import type { TileSpec } from '../job/Job.ts';
import type { CutTile } from '../tiles/TilePlan.ts';
import { turnedAndMoved } from './turnedAndMoved.ts';

/** Nearer to a side of the tile than this, in ticks, is on it. */
const AT_SIDE = 32;

/** Of two opposite sides of a tile the only one that an offcut still has; undefined where it has both or neither. */
export interface SidesLeft {
  readonly across: 'left' | 'right' | undefined;
  readonly up: 'bottom' | 'top' | undefined;
}

/** Which sides of its tile the larger pieces, sawn first, have left a piece: from these a setter can measure who has the offcut in hand. */
export function sidesLeft(
  { length, width }: Pick<TileSpec, 'length' | 'width'>,
  cuts: readonly Cut[],
  pieces: CutTile['pieces'],
  i: number,
): SidesLeft {
  const own = shapeArea(cuts[i]!.shape);
  const before = pieces.flatMap(({ turn, at }, k) => {
    const { shape } = cuts[k]!;
    if (k === i || shapeArea(shape) < own) return [];
    return [bounds(shape.outer.map((point) => turnedAndMoved(point, turn, at)))];
  });
  const only = <T>([low, high]: readonly [T, T], lowTaken: boolean, highTaken: boolean) =>
    lowTaken === highTaken ? undefined : lowTaken ? high : low;
  return {
    across: only(
      ['left', 'right'],
      before.some(({ minX }) => minX <= AT_SIDE),
      before.some(({ maxX }) => maxX >= length - AT_SIDE),
    ),
    up: only(
      ['bottom', 'top'],
      before.some(({ minY }) => minY <= AT_SIDE),
      before.some(({ maxY }) => maxY >= width - AT_SIDE),
    ),
  };
}
