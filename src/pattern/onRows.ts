import { bounds, type Point, type Ring, translate } from '../geometry/index.ts';
import type { Ticks } from '../measure/index.ts';
import type { Pattern, PatternTile } from './Pattern.ts';

/**
 * A pattern of one tile in rows along x, every second row half a `pitch` along: `pitch` is from tile to tile in
 * a row, and from a row to the second above it.
 */
export function onRows(name: string, tile: string, ring: Ring, pitch: Point, joint: Ticks): Pattern {
  const step: Point = [pitch[0], pitch[1] / 2];
  const { minX, minY } = bounds(ring);
  const tiles = [0, 1].map((row): PatternTile => {
    const by: Point = [Math.round((row * pitch[0]) / 2) - minX, Math.round((row * pitch[1]) / 2) - minY];
    return {
      tile,
      ring: ring.map((point) => translate(point, by)),
      quarter: 0,
      column: [1, 0, 0],
      row: [0, 2, row],
    };
  });
  return {
    name,
    a: [pitch[0], 0],
    b: [0, pitch[1]],
    tiles,
    joint,
    module: step,
    step,
    straightX: false,
    straightY: false,
    inCourses: false,
  };
}
