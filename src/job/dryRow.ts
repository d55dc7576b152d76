import type { Ticks } from '../measure/index.ts';
import { checkRun } from '../trade/index.ts';
import type { TileSpec } from './Job.ts';

/**
 * Length of a row of tiles laid loose with their joints, in ticks: along their length; of chevron tiles one above another
 * in their column; of rhombuses side against side, along their edges, where the joint is crossed aslant.
 *
 * @example
 * dryRow({ length: 600, width: 300 }, 10, 10) //=> 6090
 * dryRow({ length: 300, width: 600, shape: { kind: 'chevron', rise: 400, hand: 'left' } }, 9, 10) //=> 2135
 * dryRow({ length: 800, width: 600, shape: { kind: 'rhombus' } }, 24, 2) //=> 1025
 */
export function dryRow(
  { length, width, shape }: Pick<TileSpec, 'length' | 'width' | 'shape'>,
  joint: Ticks,
  tiles?: number,
): Ticks {
  if (shape?.kind === 'chevron')
    return Math.round(checkRun(width - shape.rise, joint * Math.hypot(1, shape.rise / length), tiles));
  if (shape?.kind !== 'rhombus') return checkRun(length, joint, tiles);
  const side = Math.hypot(length, width) / 2;
  return Math.round(checkRun(side, (joint * 2 * side ** 2) / (length * width), tiles));
}
