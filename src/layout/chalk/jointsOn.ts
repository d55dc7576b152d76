import { bounds, type Point } from '../../geometry/index.ts';
import type { Ticks } from '../../measure/index.ts';
import type { Pattern } from '../../pattern/Pattern.ts';
import type { FramedRoom } from '../Layout.ts';

/**
 * Where joints lie on an axis over the whole room: their middles, those beside the first tile of the
 * repeat. Along x these are joints of the courses of one kind where courses are shifted.
 */
export function jointsOn(axis: 0 | 1, { outline }: FramedRoom, pattern: Pattern, origin: Point): Ticks[] {
  const { minX, minY, maxX, maxY } = bounds(outline);
  const [low, high] = axis === 0 ? [minX, maxX] : [minY, maxY];
  const module = pattern.module[axis];
  const tile = bounds(pattern.tiles[0]!.ring);
  const first = origin[axis] + (axis === 0 ? tile.minX : tile.minY) - Math.ceil(pattern.joint / 2);
  const joints: Ticks[] = [];
  for (let n = Math.ceil((low - first) / module); first + n * module <= high; n++)
    joints.push(first + n * module);
  return joints;
}
