import { simplifyPaths } from 'clipper2-ts';
import { ringsOf } from './overlay.ts';
import type { Shape } from './Shape.ts';
import { shapesOf } from './shapesOf.ts';

/**
 * Shapes without the corners that stand out of the line of their neighbours by less than so many ticks: for questions that small dents do
 * not change.
 *
 * @example simplified([{outer: [[0, 0], [450, 3], [900, 0], [900, 900], [0, 900]], holes: []}], 10) //=> [{outer: [[0, 0], [900, 0], [900, 900], [0, 900]], holes: []}]
 */
export function simplified(shapes: readonly Shape[], by: number): Shape[] {
  const paths = ringsOf(shapes).map((ring) => ring.map(([x, y]) => ({ x, y })));
  const plain = simplifyPaths(paths, by).filter((path) => path.length > 2);
  return shapesOf(plain.map((path) => path.map(({ x, y }) => [x, y] as const)));
}
