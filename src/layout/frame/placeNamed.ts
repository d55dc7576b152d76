import { leftOf, type Point, ringCentroid } from '../../geometry/index.ts';
import type { Obstacle, Room } from '../../room/Room.ts';
import { wallEnds } from './wallEnds.ts';

/**
 * Where in a room, in its frame, a name stands for a point: a corner; the middle of a wall, of the clear opening of a doorway on
 * the wall's face, of an obstacle. The names of a job are checked when it is read.
 *
 * @throws Error for a name that the room does not have.
 */
export function placeNamed(room: Room, name: string): Point {
  const corner = room.adjustment.corners.findIndex((one) => one.name === name);
  const opening = room.openings.find((one) => one.name === name);
  const obstacle = room.obstacles.find((one) => one.name === name);
  const place =
    room.corners[corner] ??
    wallMiddle(room, name) ??
    (opening && between(...opening.face)) ??
    (obstacle && middleOf(obstacle));
  if (!place) throw new Error(`No place is called ${name}.`);
  return place;
}

/** Half way along a wall, whatever opens in it; of a curved one on its face. */
function wallMiddle(room: Room, name: string): Point | undefined {
  const ends = wallEnds(room, name);
  if (!ends) return undefined;
  const middle = between(...ends);
  const { arc } = room.edges.find((edge) => edge.name === name && edge.arc) ?? {};
  return arc ? rounded(leftOf(...ends, middle, -arc.sign * arc.rise)) : middle;
}

function middleOf({ circle, ring }: Obstacle): Point {
  return circle?.centre ?? ringCentroid(ring);
}

function between([ax, ay]: Point, [bx, by]: Point): Point {
  return rounded([(ax + bx) / 2, (ay + by) / 2]);
}

function rounded([x, y]: Point): Point {
  return [Math.round(x) + 0, Math.round(y) + 0];
}
