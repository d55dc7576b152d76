import { type Point, rotate } from '../../geometry/index.ts';
import type { PatternSpec } from '../../job/Job.ts';

interface Side {
  readonly from: Point;
  readonly to: Point;
}

/**
 * By how many degrees a pattern is turned against the room's own direction, quarter turns aside: by its own turn where it follows a
 * wall or shares the taper; along a line from place to place by what that line and its turn lie off the walls, all together.
 *
 * @param sides those of the room, in the pattern's frame.
 */
export function slantOf({ along, turnedDeg }: PatternSpec, sides: readonly Side[]): number {
  if (typeof along === 'string' || along.kind === 'shared') return turnedDeg;
  return (-meanDirection(sides) * 180) / Math.PI + 0;
}

/** The direction of all sides by their lengths, within 45 degrees of the first axis: walls at right angles to each other count as one direction. */
function meanDirection(sides: readonly Side[]): number {
  const sum = sides.reduce<Point>(
    ([x, y], { from, to }) => {
      const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
      const [u, v] = rotate([Math.hypot(dx, dy), 0], 4 * Math.atan2(dy, dx));
      return [x + u, y + v];
    },
    [0, 0],
  );
  return Math.atan2(sum[1], sum[0]) / 4;
}
