import { bounds, type Point } from '../../geometry/index.ts';
import type { Ticks } from '../../measure/index.ts';
import type { Pattern } from '../../pattern/Pattern.ts';

/** The middle of the joint before the first tile of the repeat at the origin, on one axis; the others lie whole modules from it. */
export function firstJoint(
  axis: 0 | 1,
  { tiles, joint }: Pick<Pattern, 'tiles' | 'joint'>,
  origin: Point,
): Ticks {
  const { minX, minY } = bounds(tiles[0]!.ring);
  return origin[axis] + (axis === 0 ? minX : minY) - Math.ceil(joint / 2);
}
