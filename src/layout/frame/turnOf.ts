import type { Point } from '../../geometry/index.ts';
import type { PatternSpec } from '../../job/Job.ts';
import type { Room } from '../../room/Room.ts';

/** How the pattern's frame lies in the room's: turned by `turn` radians, `about` a point of the wall it follows. */
export interface FrameTurn {
  readonly turn: number;
  readonly about: Point;
}

/**
 * The direction of the wall that the pattern is square to, and the pattern's own turn on top. Right angles
 * come out as whole quarter turns, so that nothing is rounded where nothing is turned.
 */
export function turnOf(
  { corners, edges }: Pick<Room, 'corners' | 'edges'>,
  { along, turnedDeg }: PatternSpec,
): FrameTurn {
  const own = edges.filter(({ name }) => name === along);
  const from = own[0]?.from ?? corners[0]!;
  const to = own.at(-1)?.to ?? corners[1]!;
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  if (dx === 0 || dy === 0) {
    const quarters = dy === 0 ? (dx > 0 ? 0 : 2) : dy > 0 ? 1 : 3;
    return { turn: radians(quarters * 90 + turnedDeg), about: from };
  }
  return { turn: Math.atan2(dy, dx) + radians(turnedDeg), about: from };
}

/** Between −180° and 180°, so that a full turn is none. */
function radians(degrees: number): number {
  const within = ((((degrees + 180) % 360) + 360) % 360) - 180;
  return (within * Math.PI) / 180;
}
