import { distancePointSegment, type Ring } from '../geometry/index.ts';
import type { Layout } from '../layout/Layout.ts';
import type { RoomEdge } from '../room/Room.ts';

/** A side of the field with the room's edge that it runs along; its length in ticks. */
export interface EdgeSide {
  readonly edge: RoomEdge;
  readonly length: number;
}

/** Every side of a floor's field with the edge that it runs along: the one nearest to its middle, less the edge's own gap. */
export function edgeSides(frame: Layout['frame']): readonly EdgeSide[] {
  const edges = [...frame.edges, ...frame.obstacles.flatMap((obstacle) => obstacle.edges)];
  return frame.field.flatMap(({ outer, holes }) => [outer, ...holes].flatMap((ring) => sidesOf(ring, edges)));
}

function sidesOf(ring: Ring, edges: readonly RoomEdge[]): readonly EdgeSide[] {
  return ring.flatMap((from, at) => {
    const to = ring[(at + 1) % ring.length]!;
    const middle = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2] as const;
    const off = (edge: RoomEdge) => Math.abs(distancePointSegment(middle, edge.from, edge.to) - edge.gap);
    const edge = edges.reduce<RoomEdge | undefined>(
      (best, next) => (best === undefined || off(next) < off(best) ? next : best),
      undefined,
    );
    return edge ? [{ edge, length: Math.hypot(to[0] - from[0], to[1] - from[1]) }] : [];
  });
}
