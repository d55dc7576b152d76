import type { Point } from '../../geometry/index.ts';
import type { PatternAlong, PatternSpec } from '../../job/Job.ts';
import type { Room } from '../../room/Room.ts';
import { sharedTurn } from '../taper/sharedTurn.ts';
import type { FrameTurn } from './FrameTurn.ts';
import { placeNamed } from './placeNamed.ts';
import { wallEnds } from './wallEnds.ts';

type Line = readonly [from: Point, to: Point];

/**
 * The direction of the wall or line that the pattern is square to, and the pattern's own turn on top. Right angles
 * come out as whole quarter turns, so that nothing is rounded where nothing is turned.
 */
export function turnOf(room: Room, { along, turnedDeg }: PatternSpec): FrameTurn {
  const line = lineOf(room, along);
  const own = directionOf(line);
  const shared = typeof along !== 'string' && along.kind === 'shared';
  const { quarters, off } = shared ? parted(sharedTurn(room, along, radians(own))) : own;
  return { turn: radians({ quarters, off, turnedDeg }), about: line[0] };
}

/** A direction as whole quarter turns and what it lies off them, in radians; 0 where the line runs along an axis of the room. */
interface Direction {
  readonly quarters: number;
  readonly off: number;
}

function lineOf(room: Room, along: PatternAlong): Line {
  if (typeof along !== 'string' && along.kind === 'sight')
    return [placeNamed(room, along.from), placeNamed(room, along.to)];
  const wall = typeof along === 'string' ? along : along.near;
  return wallEnds(room, wall) ?? [room.corners[0]!, room.corners[1]!];
}

function directionOf([from, to]: Line): Direction {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  if (dx !== 0 && dy !== 0) return { quarters: 0, off: Math.atan2(dy, dx) };
  return { quarters: dy === 0 ? (dx > 0 ? 0 : 2) : dy > 0 ? 1 : 3, off: 0 };
}

/** Turns no farther apart than this are one: an angle that was added up comes out as the right angle it is. */
const HAIR = 1e-9;

function parted(turn: number): Direction {
  const quarters = Math.round(turn / (Math.PI / 2));
  return Math.abs(turn - quarters * (Math.PI / 2)) <= HAIR
    ? { quarters, off: 0 }
    : { quarters: 0, off: turn };
}

/** Whole degrees between −180° and 180°, so that a full turn is none. */
function radians({ quarters, off, turnedDeg = 0 }: Direction & { readonly turnedDeg?: number }): number {
  const within = ((((quarters * 90 + turnedDeg + 180) % 360) + 360) % 360) - 180;
  return off + (within * Math.PI) / 180;
}
