import { bounds, isNarrower, type Ring } from '../../geometry/index.ts';
import type { Ticks } from '../../measure/index.ts';
import type { Ground } from '../frame/Ground.ts';
import type { LaidPiece } from '../pieces/LaidPiece.ts';

/** A few ticks of rounding, a hundredth of a millimetre, break no limit. */
const ROUNDING: Ticks = 4;

/** A cut of more than this share of a tile is nearly a whole one: slow and chippy. Common practice, no source. */
export const NEAR_FULL = 0.95;

/**
 * The smallest cut that balance can always reach on a side of a tile: of module m = side + joint, the least
 * share, less one joint. For half a tile that is (side − joint) / 2.
 *
 * @example leastCut(96012, 1524, 0.5) //=> 47244
 */
export function leastCut(side: Ticks, joint: Ticks, minShare: number): Ticks {
  return minShare * (side + joint) - joint;
}

/** Whether a cut is less than half a tile one way, as balance reckons it. Whether it is in sight is not asked. */
export function isUnderHalf({ extent, ring }: LaidPiece, { minShare }: Ground, joint: Ticks): boolean {
  const { minX, minY, maxX, maxY } = bounds(ring);
  const [width, height] = [maxX - minX, maxY - minY];
  return (
    extent[0] < leastCut(width, joint, minShare) - ROUNDING ||
    extent[1] < leastCut(height, joint, minShare) - ROUNDING
  );
}

/** The least strip of a tile: as the job says, but no more than half the tile, or every cut of a mosaic would be thin. */
export function leastStrip(ring: Ring, { minStrip }: Ground): Ticks {
  const { minX, minY, maxX, maxY } = bounds(ring);
  return Math.min(minStrip, Math.floor(Math.min(maxX - minX, maxY - minY) / 2));
}

/** Whether a piece passes through a slot narrower than the least strip. */
export function isThin({ shape, ring }: LaidPiece, ground: Ground): boolean {
  return isNarrower(shape.outer, leastStrip(ring, ground) - ROUNDING);
}

/** Whether a cut takes off less than a twentieth of a tile on either axis. */
export function isNearFull({ shares, extent }: LaidPiece): boolean {
  return shares.some((share, axis) => share > NEAR_FULL && extent[axis]! / share - extent[axis]! > ROUNDING);
}

/** Whether less tile than wanted stays between an opening and an edge of the tile. */
export function hasWebFault({ web }: LaidPiece, { minWeb }: Ground): boolean {
  return web !== null && web < minWeb - ROUNDING;
}
