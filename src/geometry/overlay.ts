import { booleanOp, ClipType, FillRule, type Path64 } from 'clipper2-ts';
import { bounds, boxesMeet } from './bounds.ts';
import type { Ring } from './Ring.ts';
import type { Shape } from './Shape.ts';
import { shapesOf } from './shapesOf.ts';

/** The three ways in which two sets of shapes are laid over one another. */
export type Overlay = 'intersect' | 'subtract' | 'unite';

const CLIP_TYPE = {
  intersect: ClipType.Intersection,
  subtract: ClipType.Difference,
  unite: ClipType.Union,
} as const;

/**
 * Two sets of shapes laid over one another. Shapes of one set may overlap. The result is split into
 * connected shapes, its corners rounded to whole ticks.
 *
 * @example overlay('subtract', [{outer: [[0, 0], [9, 0], [9, 9], [0, 9]], holes: []}], [{outer: [[0, 0], [9, 0], [9, 5], [0, 5]], holes: []}]) //=> [{outer: [[0, 5], [9, 5], [9, 9], [0, 9]], holes: []}]
 */
export function overlay(how: Overlay, a: readonly Shape[], b: readonly Shape[]): Shape[] {
  const paths = booleanOp(CLIP_TYPE[how], pathsOf(a), pathsOf(b), FillRule.NonZero);
  return shapesOf(paths.map((path) => path.map(({ x, y }) => [x, y] as const)));
}

function pathsOf(shapes: readonly Shape[]): Path64[] {
  return shapes.flatMap((shape) => [pathOf(shape.outer), ...shape.holes.map(pathOf)]);
}

function pathOf(ring: Ring): Path64 {
  return ring.map(([x, y]) => ({ x: Math.round(x), y: Math.round(y) }));
}

/** The shapes of a set that come near another set; what the rest do to it is known without clipping. */
export function near(shapes: readonly Shape[], others: readonly Shape[]): Shape[] {
  const box = bounds(others.map((shape) => shape.outer));
  return shapes.filter((shape) => boxesMeet(bounds(shape.outer), box));
}
