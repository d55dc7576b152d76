import { distancePointSegment, type Point, side } from '../../geometry/index.ts';
import type { EdgeFacts } from '../../job/Job.ts';
import type { Ticks } from '../../measure/index.ts';
import type { RoomInFrame } from './frameRoom.ts';

/** A face that bounds the floor: an edge of the room, of an obstacle, or a circle. The floor is on its left. */
export interface Face extends EdgeFacts {
  readonly id: string;
  readonly name: string;
  readonly from: Point;
  readonly to: Point;
  readonly circle?: { readonly centre: Point; readonly radius: Ticks };
  /** Belongs to a doorway: its closed-door line or one of its sides. */
  readonly doorway: boolean;
}

/** Every face of a room, edges of obstacles turned about so that the floor is on the left of them too. */
export function facesOf({ edges, obstacles }: RoomInFrame, doorways: readonly string[]): Face[] {
  const own = edges.map((edge): Face => ({ ...edge, doorway: doorways.includes(edge.name) }));
  const others = obstacles.flatMap(({ name, circle, facts, edges: sides }): Face[] => {
    if (circle) {
      const { centre, radius } = circle;
      return [
        { ...facts, id: name, name, from: centre, to: centre, circle: { centre, radius }, doorway: false },
      ];
    }
    return sides.map((edge) => ({ ...edge, from: edge.to, to: edge.from, doorway: false }));
  });
  return [...own, ...others];
}

/** Distance of a point from a face, in ticks; negative inside a circle. */
export function distanceToFace({ from, to, circle }: Face, point: Point): number {
  if (!circle) return distancePointSegment(point, from, to);
  return Math.hypot(point[0] - circle.centre[0], point[1] - circle.centre[1]) - circle.radius;
}

/** Signed distance of a point from the line of a straight face, more than 0 on the floor's side. */
export function aheadOfFace({ from, to }: Face, point: Point): number {
  return side(from, to, point) / Math.hypot(to[0] - from[0], to[1] - from[1]);
}
