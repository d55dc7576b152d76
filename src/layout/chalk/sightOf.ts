import type { PatternSpec } from '../../job/Job.ts';
import type { Room } from '../../room/Room.ts';
import { intoFrame } from '../frame/frameRoom.ts';
import { placeNamed } from '../frame/placeNamed.ts';
import { turnOf } from '../frame/turnOf.ts';
import type { Chalk, Sight } from '../Layout.ts';

/** The line from place to place that a pattern follows, in its frame, and the chalk line that runs with it; undefined where it follows none. */
export function sightOf(
  room: Room,
  pattern: PatternSpec,
  { crossing, lines }: Pick<Chalk, 'crossing' | 'lines'>,
): Sight | undefined {
  const { along, turnedDeg } = pattern;
  if (typeof along === 'string' || along.kind !== 'sight') return undefined;
  const move = intoFrame(turnOf(room, pattern));
  const [from, to] = [move(placeNamed(room, along.from)), move(placeNamed(room, along.to))];
  if (turnedDeg % 90 !== 0) return { from, to };
  // Along x of the frame, or where it is turned by a quarter along y.
  const upright = turnedDeg % 180 !== 0;
  const line = lines.find(({ axis }) => axis === (upright ? 'along' : 'across'));
  const square = upright ? 0 : 1;
  return {
    from,
    to,
    ...(line && { beside: { line: line.name, off: Math.abs(crossing[square] - from[square]) } }),
  };
}
