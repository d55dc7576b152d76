import { distancePointSegment, type Ring } from '../geometry/index.ts';
import type { Meets } from '../job/Job.ts';
import { bayRuns } from '../layout/movement/bayRuns.ts';
import type { System, Ticks } from '../measure/index.ts';
import type { RoomEdge } from '../room/Room.ts';
import { bayLimit, exteriorJointWidth, movementBays } from '../trade/index.ts';
import { fieldRuns } from './fieldRuns.ts';
import type { Laid } from './laidSurfaces.ts';

/** Joints of one width that take sealant: at the field's edges, across it, or over a joint of the base. Ticks. */
export interface SoftJoint {
  readonly kind: 'edge' | 'movement' | 'carried';
  readonly width: Ticks;
  readonly length: number;
}

/** Edges that stay open: the flange lies under the toilet, a tucked edge under its casing. */
const OPEN: readonly Meets[] = ['flange', 'casing'];

/** Every joint of a surface that is filled with sealant and not with grout, summed by width, the widest last. */
export function softJoints(laid: Laid, heated: boolean, system: System): readonly SoftJoint[] {
  return [...edgeJoints(laid), ...movementJoints(laid, heated, system)];
}

function edgeJoints({ layout: { frame } }: Laid): readonly SoftJoint[] {
  const edges = [...frame.edges, ...frame.obstacles.flatMap((obstacle) => obstacle.edges)];
  const lengths = new Map<Ticks, number>();
  for (const shape of frame.field)
    for (const ring of [shape.outer, ...shape.holes])
      for (const { edge, length } of sidesOf(ring, edges))
        if (!OPEN.includes(edge.meets)) lengths.set(edge.gap, (lengths.get(edge.gap) ?? 0) + length);
  return [...lengths]
    .filter(([width, length]) => width > 0 && length > 0)
    .sort(([a], [b]) => a - b)
    .map(([width, length]) => ({ kind: 'edge', width, length }));
}

/** Each side of a ring with the room's edge that it runs along: the one nearest to its middle, less the edge's own gap. */
function sidesOf(ring: Ring, edges: readonly RoomEdge[]): readonly { edge: RoomEdge; length: number }[] {
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

/** Lines on joints of the tile by their length; where the pattern has none, as many as bays need, from side to side. */
function movementJoints({ spec, layout }: Laid, heated: boolean, system: System): readonly SoftJoint[] {
  const limit = bayLimit(spec.exposure, heated, system);
  const lengths = new Map<Ticks, number>();
  for (const { width, length } of layout.movement?.lines ?? [])
    lengths.set(width, (lengths.get(width) ?? 0) + length);
  const placed = [...lengths].sort(([a], [b]) => a - b);
  const runs = fieldRuns(layout);
  const parted = bayRuns(layout, layout.movement?.lines ?? []);
  const unplaced = parted.flatMap((run, axis): [Ticks, number][] => {
    const { bays, each } = movementBays(run, limit);
    if (bays === 1) return [];
    const width = spec.exposure === 'outside' ? exteriorJointWidth(each) : layout.pattern.joint;
    return [[width, (bays - 1) * runs[1 - axis]!]];
  });
  return [...placed, ...unplaced].map(([width, length]) => ({ kind: 'movement', width, length }));
}
