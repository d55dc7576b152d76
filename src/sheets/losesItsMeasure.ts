import type { Cut, CutEdge, CutSize } from '../cuts/Cut.ts';
import { printedSizes } from '../drawing/index.ts';
import type { TileSpec } from '../job/Job.ts';
import type { Ticks } from '../measure/index.ts';

/** Ends of an edge lie this near to the side of the tile that it is a part of, in ticks. */
const ON_SIDE = 2;

/** Whether a size that a card prints is measured from a side of the tile that is sawn off: after the first cut it can be neither marked nor checked. */
export function losesItsMeasure(
  cut: Pick<Cut, 'edges' | 'sizes'>,
  tile: Pick<TileSpec, 'length' | 'width' | 'shape'>,
): boolean {
  // A tile that is no rectangle is measured from its points, too.
  if (tile.shape) return false;
  return printedSizes(cut).some(({ from }) => from !== 'none' && !cut.edges.some(staysOn(from, tile)));
}

/** Whether an edge is a part of a side of the tile that stays. */
function staysOn(
  side: Exclude<CutSize['from'], 'none'>,
  { length, width }: Record<'length' | 'width', Ticks>,
) {
  const axis = side === 'left' || side === 'right' ? 0 : 1;
  const at = { left: 0, right: length, bottom: 0, top: width }[side];
  return ({ from, to, factory }: CutEdge) =>
    factory && [from, to].every((end) => Math.abs(end[axis] - at) <= ON_SIDE);
}
