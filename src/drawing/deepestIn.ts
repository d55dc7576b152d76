import { distancePointSegment, type Point, poleOfInaccessibility, type Shape } from '../geometry/index.ts';
import type { Ticks } from '../measure/index.ts';

/** The deepest spot of a shape, to half a millimetre, and how far it is from the shape's sides, in ticks. */
export function deepestIn(shape: Shape): { readonly at: Point; readonly room: Ticks } {
  const at = poleOfInaccessibility(shape, 160);
  const distances = [shape.outer, ...shape.holes].flatMap((ring) =>
    ring.map((a, i) => distancePointSegment(at, a, ring[(i + 1) % ring.length]!)),
  );
  return { at, room: Math.min(...distances) };
}
