import { bounds, rotate, shapeArea } from '../geometry/index.ts';
import type { Layout } from '../layout/Layout.ts';
import { areaM2Of, type Ticks } from '../measure/index.ts';

/** Longest extent of a field along and square to the room's first wall, in ticks. */
export function fieldRuns(layout: Layout): readonly [Ticks, Ticks] {
  const boxes = layout.field.map(({ outer }) => bounds(outer.map((point) => rotate(point, layout.turn))));
  return [
    Math.round(Math.max(0, ...boxes.map(({ minX, maxX }) => maxX - minX))),
    Math.round(Math.max(0, ...boxes.map(({ minY, maxY }) => maxY - minY))),
  ];
}

/** Area of a layout's field in square metres. */
export function fieldAreaM2(layout: Layout): number {
  return areaM2Of(layout.field.reduce((sum, shape) => sum + shapeArea(shape), 0));
}
