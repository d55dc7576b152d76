import type { Point } from '../../geometry/index.ts';
import type { RoomEdge } from '../../room/Room.ts';
import type { ChalkMark, TapeEnd } from '../Layout.ts';
import type { Faces } from './Faces.ts';
import { hasFace } from './hasFace.ts';
import { type EndBeside, tapeEnds } from './tapeEnds.ts';
import { tapeFollows } from './tapeFollows.ts';

/**
 * A mark on an edge at a point of it: its running distance from one end. A corner of the room is taken before
 * a jamb or what stands in the room, the nearer before the farther; null where no end will do.
 */
export function markOn(edge: RoomEdge, at: Point, faces: Faces): ChalkMark | null {
  if (!hasFace(edge) || !tapeFollows(edge)) return null;
  const ends = tapeEnds(edge, at, faces);
  const [best] = [...ends].sort(
    (a, b) =>
      Number(b.isCorner) - Number(a.isCorner) ||
      Number(a.across) - Number(b.across) ||
      a.distance - b.distance,
  );
  if (!best) return null;
  const [one, other] = ends;
  const both = one && other && closed(edge, one, other, faces);
  const { end, distance } = both?.[best === one ? 0 : 1] ?? best;
  return { edge: edge.id, end, distance, at, ...(both ? { both } : {}) };
}

/** Both distances; between two corners the second is what the first leaves of the wall as used. */
function closed(
  edge: RoomEdge,
  one: EndBeside,
  other: EndBeside,
  { walls }: Faces,
): readonly [TapeEnd, TapeEnd] {
  const wall = one.isCorner && other.isCorner ? walls.get(edge.name) : undefined;
  const rest = wall === undefined ? other.distance : wall - one.distance;
  return [
    { end: one.end, distance: one.distance },
    { end: other.end, distance: rest },
  ];
}
