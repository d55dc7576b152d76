import {
  circleRing,
  outsetByEdge,
  type Point,
  type Ring,
  rotate,
  rotateRound,
  type Shape,
  transformRing,
  transformShape,
} from '../../geometry/index.ts';
import { makeField } from '../../room/makeField.ts';
import type { Obstacle, Room, RoomEdge } from '../../room/Room.ts';
import type { FramedRoom } from '../Layout.ts';
import type { FrameTurn } from './FrameTurn.ts';

type Move = (point: Point) => Point;

/** A framed room that still knows what meets each obstacle. */
export type RoomInFrame = Omit<FramedRoom, 'obstacles'> & { readonly obstacles: readonly Obstacle[] };

/**
 * The room turned into the pattern's frame. Quarter turns are exact. At any other turn each corner is
 * rounded once, seen from the wall that the pattern follows so that this wall stays straight, and the field
 * is drawn in anew from the rounded corners: gaps stay exact along walls that are square to the pattern.
 */
export function frameRoom(room: Room, frame: FrameTurn): RoomInFrame {
  const move = intoFrame(frame);
  const edges = moveEdges(room.edges, move);
  const outline = room.outline.map(move);
  const exact = (frame.turn / (Math.PI / 2)) % 1 === 0;
  const obstacles = room.obstacles.map((one) => moveObstacle(one, move, exact));
  const field: readonly Shape[] = exact
    ? room.field.map((shape) => transformShape(shape, move))
    : makeField(outline, edges, obstacles);
  const { falls } = room;
  const folds = falls?.folds.map((fold) => ({ ...fold, from: move(fold.from), to: move(fold.to) }));
  return { outline, edges, obstacles, field, ...(falls && folds && { falls: { ...falls, folds } }) };
}

/** The way of one point from the room's frame into the pattern's, rounded to ticks. */
export function intoFrame({ turn, about }: FrameTurn): Move {
  if (turn === 0) return (point) => point;
  const [atX, atY] = rotateRound(about, -turn);
  return ([x, y]) => {
    const [u, v] = rotate([x - about[0], y - about[1]], -turn);
    return [Math.round(u) + atX + 0, Math.round(v) + atY + 0];
  };
}

function moveEdges(edges: readonly RoomEdge[], move: Move): RoomEdge[] {
  return edges.map(({ arc, ...edge }) => {
    const moved = { ...edge, from: move(edge.from), to: move(edge.to) };
    return arc ? { ...moved, arc: { ...arc, centre: move(arc.centre) } } : moved;
  });
}

/** An obstacle turned into the frame; `exact` where the turn is whole quarters. */
export function moveObstacle(one: Obstacle, move: Move, exact: boolean): Obstacle {
  const circle = one.circle && { ...one.circle, centre: move(one.circle.centre) };
  const ring = circle ? circleRing(circle.centre, circle.radius) : transformRing(one.ring, move);
  return { ...one, ring, cleared: clearedOf(), edges: moveEdges(one.edges, move), ...(circle && { circle }) };

  function clearedOf(): Ring {
    if (exact) return transformRing(one.cleared, move);
    if (circle) return circleRing(circle.centre, circle.clearRadius);
    return outsetByEdge(
      ring,
      ring.map(() => one.facts.gap),
    );
  }
}
