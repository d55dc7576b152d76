import { distancePointSegment, type Point, side } from '../../geometry/index.ts';
import type { EdgeFacts } from '../../job/Job.ts';
import type { Ticks } from '../../measure/index.ts';
import type { EdgeArc, RoomEdge } from '../../room/Room.ts';
import type { RoomInFrame } from './frameRoom.ts';

/** A face that bounds the floor: an edge of the room, of an obstacle, or a circle. The floor is on its left. */
export interface Face extends EdgeFacts {
  readonly id: string;
  readonly name: string;
  readonly from: Point;
  readonly to: Point;
  readonly circle?: { readonly centre: Point; readonly radius: Ticks };
  /** A curved wall is one face, from end to end of its arc, which these points follow; `chord` is that of the whole wall. */
  readonly curve?: {
    readonly arc: EdgeArc;
    readonly points: readonly Point[];
    readonly chord: readonly [Point, Point];
  };
  /** Belongs to a doorway: its closed-door line or one of its sides. */
  readonly doorway: boolean;
}

/** Every face of a room, edges of obstacles turned about so that the floor is on the left of them too. */
export function facesOf({ edges, obstacles }: RoomInFrame, doorways: readonly string[]): Face[] {
  const own = curvesOf(edges).map((edge): Face => ({ ...edge, doorway: doorways.includes(edge.name) }));
  const others = obstacles.flatMap(({ name, circle, facts, edges: sides }): Face[] => {
    if (circle) {
      const { centre, radius } = circle;
      return [
        { ...facts, id: name, name, from: centre, to: centre, circle: { centre, radius }, doorway: false },
      ];
    }
    const turned = [...sides].reverse().map((edge) => ({ ...edge, from: edge.to, to: edge.from }));
    const faces = curvesOf(turned).map((edge): Face => ({ ...edge, id: sideOf(edge.id), doorway: false }));
    return faces.reverse();
  });
  return [...own, ...others];
}

/** The side of an obstacle to which a chord of its curve belongs: `bar:2` of `bar:2.5`. */
const sideOf = (id: string) => id.replace(/(:\d+)\.\d+$/, '$1');

/** What a chord is a part of: a wall by its name, a side of an obstacle by its number too. */
const wholeOf = ({ id, name }: Pick<RoomEdge, 'id' | 'name'>) => (id.includes(':') ? sideOf(id) : name);

type Curved = RoomEdge & Pick<Face, 'curve'>;

/** Edges of a room or of an obstacle with the chords of each curved wall or side, as far as no doorway parts them, drawn together to one. */
export function curvesOf(edges: readonly RoomEdge[]): Curved[] {
  const together: Curved[] = [];
  for (const { arc, ...edge } of edges) {
    const last = together.at(-1);
    if (!arc) together.push(edge);
    else if (last?.curve && wholeOf(last) === wholeOf(edge) && `${last.to}` === `${edge.from}`) {
      const points = [...last.curve.points, edge.to];
      together.splice(-1, 1, { ...last, to: edge.to, curve: { ...last.curve, points } });
    } else
      together.push({ ...edge, curve: { arc, points: [edge.from, edge.to], chord: [edge.from, edge.to] } });
  }
  return together.map((one) => {
    if (!one.curve) return one;
    const parts = together.filter((part) => part.curve && wholeOf(part) === wholeOf(one));
    return { ...one, curve: { ...one.curve, chord: [parts[0]!.from, parts.at(-1)!.to] } };
  });
}

/** A face as straight stretches: itself, or the chords of its curve. */
export function stretchesOf(face: Face): readonly Face[] {
  if (!face.curve) return [face];
  const { curve, ...plain } = face;
  const { points } = curve;
  return points.slice(1).map((to, i) => ({ ...plain, from: points[i]!, to }));
}

/** Distance of a point from a face, in ticks; negative inside a circle. */
export function distanceToFace({ from, to, circle, curve }: Face, point: Point): number {
  if (curve) {
    const { points } = curve;
    return Math.min(...points.slice(1).map((end, i) => distancePointSegment(point, points[i]!, end)));
  }
  if (!circle) return distancePointSegment(point, from, to);
  return Math.hypot(point[0] - circle.centre[0], point[1] - circle.centre[1]) - circle.radius;
}

/** Signed distance of a point from the line of a straight face, of a curved one from its chord; more than 0 on the floor's side. */
export function aheadOfFace({ from, to }: Face, point: Point): number {
  return side(from, to, point) / Math.hypot(to[0] - from[0], to[1] - from[1]);
}
