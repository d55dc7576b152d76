import { lineThroughShape, type Point, type Shape } from '../geometry/index.ts';

/** Where a ray from the crossing leaves some shapes for good. */
export function leavesAt(crossing: Point, shapes: readonly Shape[], towards: Point): Point {
  const spans = shapes.flatMap((shape) => lineThroughShape(shape, crossing, towards));
  const t = Math.max(0, ...spans.map(({ to }) => to));
  return [crossing[0] + towards[0] * t, crossing[1] + towards[1] * t];
}
