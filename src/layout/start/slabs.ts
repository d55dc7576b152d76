import type { FieldEdge } from '../frame/fieldEdges.ts';

/** An edge of the field seen along one axis: that axis is x here. */
export type SlabEdge = Pick<FieldEdge, 'from' | 'to' | 'face'>;

/** A level stretch of field with no corner in it, and the pairs of edges that bound it from left to right. */
export interface Slab {
  readonly from: number;
  readonly to: number;
  readonly pairs: readonly (readonly [SlabEdge, SlabEdge])[];
}

/**
 * The field cut into slabs along an axis (0 for x, 1 for y) at both ends of every edge. Edges have the field on their left;
 * rings may be open where some were left out.
 */
export function slabsOf(all: readonly SlabEdge[], axis: 0 | 1): Slab[] {
  const edges = axis === 0 ? all : all.map(swapped);
  const levels = [...new Set(edges.flatMap(({ from, to }) => [from[1], to[1]]))].sort((a, b) => a - b);
  // The field is to the right of an edge that comes down; seen with the axes swapped, of one that goes up.
  const bounds = (edge: SlabEdge) => (edge.to[1] < edge.from[1] === (axis === 0) ? 'low' : 'high');
  return levels.slice(1).map((to, i) => {
    const from = levels[i]!;
    return { from, to, pairs: pairsAt(edges, (from + to) / 2, bounds) };
  });
}

function swapped({ from, to, face }: SlabEdge): SlabEdge {
  return { from: [from[1], from[0]], to: [to[1], to[0]], face };
}

function pairsAt(
  edges: readonly SlabEdge[],
  y: number,
  bounds: (edge: SlabEdge) => 'low' | 'high',
): [SlabEdge, SlabEdge][] {
  const met = edges.filter(({ from, to }) => from[1] > y !== to[1] > y);
  met.sort((a, b) => reachAt(a, y) - reachAt(b, y));
  return met.flatMap((low, i): [SlabEdge, SlabEdge][] => {
    const high = met[i + 1];
    return high && bounds(low) === 'low' && bounds(high) === 'high' ? [[low, high]] : [];
  });
}

/** Where the line of an edge is at height y. */
export function reachAt({ from, to }: SlabEdge, y: number): number {
  return from[0] + ((y - from[1]) / (to[1] - from[1])) * (to[0] - from[0]);
}
