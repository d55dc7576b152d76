import { cleanRing, type Point, transformRing, transformShape } from '../../geometry/index.ts';
import type { Obstacle, RoomEdge } from '../../room/Room.ts';
import { drawnTogether } from '../movement/drawnTogether.ts';
import type { WideJoint } from '../movement/WideJoint.ts';
import type { Face } from './Face.ts';
import { fieldEdges } from './fieldEdges.ts';
import type { RoomInFrame } from './frameRoom.ts';
import type { Ground } from './Ground.ts';

type Move = (point: Point) => Point;

/**
 * A ground drawn together at wide joints: on it the pattern repeats without a break, so a start is chosen as on any other. A wall
 * that leans across a wide joint is kept straight, which puts it off its place there by less than the extra leans.
 */
export function drawnGround(ground: Ground, wide: readonly WideJoint[]): Ground {
  if (wide.length === 0) return ground;
  const move: Move = ([x, y]) => [drawnTogether(wide, 0, x), drawnTogether(wide, 1, y)];
  const frame = drawnFrame(ground.frame, move);
  const faces = ground.faces.map((face) => drawnFace(face, move));
  return { ...ground, frame, faces, edges: fieldEdges(frame.field, faces), wide };
}

function drawnFrame({ outline, edges, obstacles, field }: RoomInFrame, move: Move): RoomInFrame {
  return {
    outline: transformRing(outline, move),
    edges: edges.map((edge) => drawnEdge(edge, move)),
    obstacles: obstacles.map((one): Obstacle => {
      const { circle } = one;
      return {
        ...one,
        ring: transformRing(one.ring, move),
        cleared: transformRing(one.cleared, move),
        edges: one.edges.map((edge) => drawnEdge(edge, move)),
        ...(circle && { circle: { ...circle, centre: move(circle.centre) } }),
      };
    }),
    field: field.map((shape) => {
      const { outer, holes } = transformShape(shape, move);
      return { outer: cleanRing(outer), holes: holes.map(cleanRing) };
    }),
  };
}

function drawnEdge({ arc, ...edge }: RoomEdge, move: Move): RoomEdge {
  const moved = { ...edge, from: move(edge.from), to: move(edge.to) };
  return arc ? { ...moved, arc: { ...arc, centre: move(arc.centre) } } : moved;
}

function drawnFace(face: Face, move: Move): Face {
  const { circle, curve } = face;
  const [from, to] = curve?.chord ?? [face.from, face.to];
  return {
    ...face,
    from: move(face.from),
    to: move(face.to),
    ...(circle && { circle: { ...circle, centre: move(circle.centre) } }),
    ...(curve && {
      curve: {
        arc: { ...curve.arc, centre: move(curve.arc.centre) },
        points: curve.points.map(move),
        chord: [move(from), move(to)],
      },
    }),
  };
}
