import { distancePointSegment, type Point, type Ring } from '../geometry/index.ts';
import type { EdgeFacts } from '../job/Job.ts';
import type { Layout } from '../layout/Layout.ts';
import type { RoomEdge } from '../room/Room.ts';

/** A side of the field with what it runs along: an edge of the room, or a round obstacle, by its name; its length in ticks. */
export interface EdgeSide {
  readonly edge: Pick<EdgeFacts, 'meets' | 'gap'> & { readonly id: string };
  readonly length: number;
}

/** A field with what may lie along it. */
export interface EdgesOfField {
  readonly field: Layout['field'];
  readonly edges: readonly LinedEdge[];
  readonly obstacles: readonly (Pick<Layout['frame']['obstacles'][number], 'name' | 'facts' | 'circle'> & {
    readonly edges: readonly LinedEdge[];
  })[];
}

type LinedEdge = EdgeSide['edge'] & Pick<RoomEdge, 'from' | 'to'>;

/** What a side may run along, with how far a point stands off where tile ends beside it. */
interface Face {
  readonly edge: EdgeSide['edge'];
  readonly off: (point: Point) => number;
}

/** Every side of a floor's field with what it runs along: what is nearest to its middle, less its own gap. */
export function edgeSides(frame: EdgesOfField): readonly EdgeSide[] {
  const faces = facesOf(frame);
  return frame.field.flatMap(({ outer, holes }) => [outer, ...holes].flatMap((ring) => sidesOf(ring, faces)));
}

/** Walls and sides of obstacles, and round obstacles, which have no edges. */
function facesOf({ edges, obstacles }: EdgesOfField): readonly Face[] {
  const straight = [...edges, ...obstacles.flatMap((obstacle) => obstacle.edges)].map((edge) => ({
    edge,
    off: (point: Point) => Math.abs(distancePointSegment(point, edge.from, edge.to) - edge.gap),
  }));
  const round = obstacles.flatMap(({ name, facts, circle }) => {
    if (!circle) return [];
    const { centre, clearRadius } = circle;
    const off = ([x, y]: Point) => Math.abs(Math.hypot(x - centre[0], y - centre[1]) - clearRadius);
    return [{ edge: { id: name, ...facts }, off }];
  });
  return [...straight, ...round];
}

function sidesOf(ring: Ring, faces: readonly Face[]): readonly EdgeSide[] {
  return ring.flatMap((from, at) => {
    const to = ring[(at + 1) % ring.length]!;
    const middle = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2] as const;
    const face = faces.reduce<Face | undefined>(
      (best, next) => (best === undefined || next.off(middle) < best.off(middle) ? next : best),
      undefined,
    );
    return face ? [{ edge: face.edge, length: Math.hypot(to[0] - from[0], to[1] - from[1]) }] : [];
  });
}
