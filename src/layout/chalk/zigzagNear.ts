import type { Point } from '../../geometry/index.ts';
import type { Pattern } from '../../pattern/Pattern.ts';

/** Where tiles lie in zigzag: a corner of a tile on the line along it that runs nearest to a place; undefined for other patterns. */
export function zigzagNear(
  { b, cornersAlong: way }: Pick<Pattern, 'b' | 'cornersAlong'>,
  origin: Point,
  middle: Point,
): Point | undefined {
  if (!way) return undefined;
  const offOf = ([x, y]: Point) => way[0] * y - way[1] * x;
  const n = Math.round(offOf([middle[0] - origin[0], middle[1] - origin[1]]) / offOf(b));
  return [origin[0] + n * b[0], origin[1] + n * b[1]];
}
