import { EndType, inflatePaths, JoinType } from 'clipper2-ts';
import { ringsOf } from './overlay.ts';
import type { Shape } from './Shape.ts';
import { shapesOf } from './shapesOf.ts';

/**
 * Shapes grown by a distance all round, or drawn in where it is negative, with round corners to a hundredth of it; by several one after
 * the other. What grows together becomes one; what is drawn in may fall apart or leave nothing. Whole ticks.
 *
 * @example offsetShapes([{outer: [[0, 0], [900, 0], [900, 90], [0, 90]], holes: []}], -50) //=> []
 * @example offsetShapes([{outer: [[0, 0], [900, 0], [900, 900], [0, 900]], holes: []}], -50) //=> [{outer: [[50, 50], [850, 50], [850, 850], [50, 850]], holes: []}]
 * @example offsetShapes([{outer: [[0, 0], [900, 0], [900, 40], [0, 40]], holes: []}], -50, 50) //=> []
 */
export function offsetShapes(shapes: readonly Shape[], ...distances: readonly number[]): Shape[] {
  const paths = ringsOf(shapes).map((ring) => ring.map(([x, y]) => ({ x: Math.round(x), y: Math.round(y) })));
  const grown = distances.reduce(
    (now, by) => inflatePaths(now, by, JoinType.Round, EndType.Polygon, 2, Math.abs(by) / 100),
    paths,
  );
  return shapesOf(grown.map((path) => path.map(({ x, y }) => [x, y] as const)));
}
