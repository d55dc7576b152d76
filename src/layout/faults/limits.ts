import { bounds, isNarrower, type Ring } from '../../geometry/index.ts';
import type { Ticks } from '../../measure/index.ts';
import type { Face } from '../frame/Face.ts';
import type { Ground } from '../frame/Ground.ts';
import type { LaidPiece } from '../pieces/LaidPiece.ts';

/** A few ticks of rounding, a hundredth of a millimetre, break no limit. */
export const ROUNDING: Ticks = 4;

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

/** A face that leans off the square by less than this, as a slope, saws a strip; one that leans more a corner. */
const SQUARE = 0.18;

/** Whether a face crosses an axis nearly square, so that it saws a strip off there; a slanted cut takes off a corner, however long the piece stays. */
function saws({ from, to, circle }: Face, axis: 0 | 1): boolean {
  const along = Math.abs(to[axis] - from[axis]);
  const aside = Math.abs(to[1 - axis]! - from[1 - axis]!);
  return circle === undefined && along <= SQUARE * aside;
}

/** Whether a cut takes a strip of less than a twentieth of a tile off it on an axis. */
export function isNearFullOn(
  { shares, extent, faces: own }: LaidPiece,
  { faces }: Pick<Ground, 'faces'>,
  axis: 0 | 1,
): boolean {
  const isNear = shares[axis] > NEAR_FULL && extent[axis] / shares[axis] - extent[axis] > ROUNDING;
  return isNear && own.some((index) => saws(faces[index]!, axis));
}

/** Whether a cut takes a strip of less than a twentieth of a tile off it on either axis. */
export function isNearFull(laid: LaidPiece, ground: Pick<Ground, 'faces'>): boolean {
  return isNearFullOn(laid, ground, 0) || isNearFullOn(laid, ground, 1);
}

/** Whether less tile than wanted stays between an opening and an edge of the tile; never of a sheet of mosaic. */
export function hasWebFault({ web }: LaidPiece, { minWeb, sheets = false }: Ground): boolean {
  return !sheets && web !== null && web < minWeb - ROUNDING;
}
