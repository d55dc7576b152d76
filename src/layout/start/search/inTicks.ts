import type { Point } from '../../../geometry/index.ts';
import type { WallScore } from '../../WallScore.ts';

const STEPS = [0, -1, 1] as const;
/** Wall with strips, in ticks, that tells no places apart. */
const SAME_LENGTH = 128;

/** Whole ticks beside a place: the nearest where the walls do not lose what they have there, because some places are good to a tick. */
export function inTicks([x, y]: Point, scoreOf: (origin: Point) => WallScore): Point {
  const most = scoreOf([x, y]).strips + SAME_LENGTH;
  const around = STEPS.flatMap((u) =>
    STEPS.map((v): Point => [Math.round(x) + u + 0, Math.round(y) + v + 0]),
  );
  const off = (at: Point) => Math.hypot(at[0] - x, at[1] - y);
  around.sort((one, other) => off(one) - off(other));
  return around.find((at) => scoreOf(at).strips <= most) ?? around[0]!;
}
