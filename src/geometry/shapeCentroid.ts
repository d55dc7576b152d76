import type { Point } from './Point.ts';
import { ringArea } from './ringArea.ts';
import { ringCentroid } from './ringCentroid.ts';
import type { Shape } from './Shape.ts';

/**
 * The centre of gravity of a shape, holes taken off.
 *
 * @example shapeCentroid({outer: [[0, 0], [40, 0], [40, 20], [0, 20]], holes: []}) //=> [20, 10]
 * @example shapeCentroid({outer: [[0, 0], [40, 0], [40, 20], [0, 20]], holes: [[[0, 0], [0, 20], [20, 20], [20, 0]]]}) //=> [30, 10]
 */
export function shapeCentroid({ outer, holes }: Shape): Point {
  let [area, x, y] = [0, 0, 0];
  [outer, ...holes].forEach((ring, i) => {
    const own = (i === 0 ? 1 : -1) * Math.abs(ringArea(ring));
    const [cx, cy] = ringCentroid(ring);
    area += own;
    x += own * cx;
    y += own * cy;
  });
  return [x / area, y / area];
}
