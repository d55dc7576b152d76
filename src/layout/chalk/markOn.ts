import type { Point } from '../../geometry/index.ts';
import type { Meets } from '../../job/Job.ts';
import type { RoomEdge } from '../../room/Room.ts';
import type { ChalkMark } from '../Layout.ts';

/** What has no face at floor level that a tape could lie along. */
const NO_FACE: readonly Meets[] = ['doorway', 'floor', 'flange', 'pipe'];

/** Whether a tape can lie along an edge. */
export function hasFace({ touch, meets }: Pick<RoomEdge, 'touch' | 'meets'>): boolean {
  return touch && !NO_FACE.includes(meets);
}

/**
 * A mark on an edge at a point of it: its running distance from one end of the edge. The end must be one
 * where a tape can be hooked or butted: the edge beyond it has a face too. A corner of the room is taken
 * before a doorway's jamb, the nearer before the farther; null where no end will do.
 */
export function markOn(
  edge: RoomEdge,
  at: Point,
  edges: readonly RoomEdge[],
  corners: ReadonlyMap<string, string>,
): ChalkMark | null {
  if (!hasFace(edge)) return null;
  const ends = [
    { end: edge.from, beyond: edges.find((one) => one !== edge && same(one.to, edge.from)) },
    { end: edge.to, beyond: edges.find((one) => one !== edge && same(one.from, edge.to)) },
  ].map(({ end, beyond }) => {
    const corner = corners.get(`${end}`);
    const distance = Math.round(Math.hypot(at[0] - end[0], at[1] - end[1]));
    return { name: corner ?? beyond?.id ?? edge.name, isCorner: corner !== undefined, distance, beyond };
  });
  const usable = ends.filter(({ isCorner, beyond }) => !isCorner || !beyond || hasFace(beyond));
  const [best] = usable.sort((a, b) => Number(b.isCorner) - Number(a.isCorner) || a.distance - b.distance);
  return best ? { edge: edge.id, end: best.name, distance: best.distance, at } : null;
}

function same(p: Point, q: Point): boolean {
  return p[0] === q[0] && p[1] === q[1];
}
