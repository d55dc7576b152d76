import type { Cut } from '../cuts/Cut.ts';
import { shapeCentroid } from '../geometry/index.ts';
import { boxOf } from './boxes.ts';
import { type CardTurn, type TileSides, tileRing, wallDownTurn } from './cutFrame.ts';
import { scaleFor, toPaper } from './Scale.ts';

/** Nearer to the middle of the tile than this, in mm at full size, nobody sees to which side more is taken away. */
const SEEN = 0.05;

/**
 * The side of its card on which more of a handed cut's tile is taken away: a card is turned so that the wall lies at its foot, so that left in
 * the tile's own axes may be right on it. Its mirror image has the other side.
 */
export function shownHand(cut: Cut, tile: TileSides, turn: CardTurn = wallDownTurn(cut)): Cut['hand'] {
  if (cut.hand === 'none') return 'none';
  const ring = tileRing(tile);
  const scale = scaleFor(ring, turn, 1, [0, 0]);
  const { left, right } = boxOf(ring.map((point) => toPaper(scale, point)));
  const off = toPaper(scale, shapeCentroid(cut.shape))[0] - (left + right) / 2;
  if (Math.abs(off) < SEEN) return cut.hand;
  return off > 0 ? 'left' : 'right';
}
