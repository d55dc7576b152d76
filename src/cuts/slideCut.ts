import type { Point } from '../geometry/index.ts';
import type { TileSpec } from '../job/Job.ts';
import type { Piece } from '../layout/Layout.ts';
import type { Ticks } from '../measure/index.ts';
import type { Cut } from './Cut.ts';
import { describePiece } from './describePiece.ts';
import { outlineEdges } from './outlineEdges.ts';
import { ownPiece } from './ownPiece.ts';
import { slidePiece } from './TileBox.ts';
import { uprightPiece } from './uprightPiece.ts';

/** What a slid cut is made anew from. */
export interface SlideFrom {
  /** The cut's first piece, whose shape it has. */
  readonly piece: Piece;
  /** By how much it may end farther from all that cuts it. */
  readonly loose: Ticks;
  readonly turns: TileSpec['turns'];
  readonly step: Ticks;
}

/**
 * A cut that is sawn from another place of its tile: its shape moved, its sizes measured anew from the tile's corners, so that they mark the
 * lines where they lie there.
 *
 * @param by ticks along and across the tile, in the cut's axes.
 */
export function slideCut(cut: Cut, by: Point, { piece, loose, turns, step }: SlideFrom): Cut {
  const slid = slidePiece(uprightPiece(ownPiece(piece, loose), turns, step).piece, by);
  const { edges, sizes } = describePiece(slid, step);
  return {
    ...cut,
    shape: slid.shape,
    circles: slid.circles.map(({ centre, radius, name }) => ({ centre, radius, name })),
    edges: outlineEdges(edges),
    sizes,
  };
}
