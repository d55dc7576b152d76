import { insetByEdge, type Ring, type Shape, subtract, withoutJogs } from '../geometry/index.ts';
import type { Obstacle, RoomEdge } from './Room.ts';

/** Where tile may lie: the outline, each edge drawn in by its gap, less the obstacles grown by theirs. */
export function makeField(
  outline: Ring,
  edges: readonly RoomEdge[],
  obstacles: readonly Obstacle[],
): Shape[] {
  const inside = insetByEdge(
    outline,
    edges.map(({ gap }) => gap),
  );
  const field = subtract(
    inside,
    obstacles.map(({ cleared }) => ({ outer: cleared, holes: [] })),
  );
  if (edges.every(({ arc }) => arc === undefined)) return field;
  return field.map(({ outer, holes }) => ({ outer: withoutJogs(outer), holes: holes.map(withoutJogs) }));
}
