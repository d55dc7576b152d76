import {
  insetByEdge,
  type Ring,
  type Shape,
  subtract,
  withoutJogs,
  withoutSpikes,
} from '../geometry/index.ts';
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
  const sides = obstacles.flatMap((one) => one.edges);
  const curved = [...edges, ...sides].some(({ arc }) => arc !== undefined);
  // Where a gap ends just where the one beside it does, such as a post's on that of its door line, rounding leaves a spike.
  const clean = (ring: Ring) => withoutSpikes(curved ? withoutJogs(ring) : ring);
  return field.map(({ outer, holes }) => ({ outer: clean(outer), holes: holes.map(clean) }));
}
