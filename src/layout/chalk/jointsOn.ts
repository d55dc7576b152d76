import { bounds, type Point } from '../../geometry/index.ts';
import type { Ticks } from '../../measure/index.ts';
import type { Pattern } from '../../pattern/Pattern.ts';
import type { FramedRoom } from '../Layout.ts';
import { drawnTogether } from '../movement/drawnTogether.ts';
import { pulledApart } from '../movement/pulledApart.ts';
import type { WideJoint } from '../movement/WideJoint.ts';
import { firstJoint } from './firstJoint.ts';

/**
 * Where joints lie on an axis over the whole room: their middles, those beside the first tile of the
 * repeat. Along x these are joints of the courses of one kind where courses are shifted.
 */
export function jointsOn(
  axis: 0 | 1,
  { outline }: Pick<FramedRoom, 'outline'>,
  pattern: Pattern,
  origin: Point,
  wide: readonly WideJoint[] = [],
): Ticks[] {
  const { minX, minY, maxX, maxY } = bounds(outline);
  const ends = axis === 0 ? [minX, maxX] : [minY, maxY];
  const [low, high] = ends.map((end) => drawnTogether(wide, axis, end)) as [Ticks, Ticks];
  const module = pattern.module[axis];
  const first = firstJoint(axis, pattern, origin);
  const joints: Ticks[] = [];
  for (let n = Math.ceil((low - first) / module); first + n * module <= high; n++)
    joints.push(pulledApart(wide, axis, first + n * module));
  return joints;
}
