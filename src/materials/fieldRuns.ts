import { shapeArea } from '../geometry/index.ts';
import type { Layout } from '../layout/Layout.ts';
import { longestRuns } from '../layout/movement/bayRuns.ts';
import { areaM2Of, type Ticks } from '../measure/index.ts';

/** Longest extent of a field along and square to the room's first wall, in ticks. */
export function fieldRuns(layout: Layout): readonly [Ticks, Ticks] {
  return longestRuns(layout.field, layout.turn);
}

/** Area of a layout's field in square metres. */
export function fieldAreaM2(layout: Layout): number {
  return areaM2Of(layout.field.reduce((sum, shape) => sum + shapeArea(shape), 0));
}
