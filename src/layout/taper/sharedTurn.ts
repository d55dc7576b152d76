import type { PatternLine } from '../../job/Job.ts';
import type { Room } from '../../room/Room.ts';
import { facesOf } from '../frame/Face.ts';
import { fieldEdges } from '../frame/fieldEdges.ts';
import { bestDirection } from './bestDirection.ts';
import { wallLines } from './wallLines.ts';
import { weighed } from './weighed.ts';

/** A turn may bring a wall within ten degrees or out of them; it is reckoned anew so many times at most. */
const MOST_ROUNDS = 8;
/** Turns no farther apart than this, in radians, are one. */
const HAIR = 1e-9;

/**
 * The direction in the room's frame, in radians, that makes the largest weighted taper of the walls in sight least; `near` is
 * the direction of the wall that it stays close to. Of walls farther than ten degrees off, at any quarter turn, none counts.
 */
export function sharedTurn(
  room: Room,
  { least, focalWeight }: Extract<PatternLine, { kind: 'shared' }>,
  near: number,
): number {
  const faces = facesOf(
    room,
    room.openings.map(({ name }) => name),
  );
  const ground = { faces, edges: fieldEdges(room.field, faces) };
  let turn = near;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const by = bestDirection(weighed(wallLines(ground, least, turn), focalWeight));
    if (Math.abs(by) <= HAIR) break;
    turn += by;
  }
  return turn;
}
