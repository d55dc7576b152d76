import { booleanOp, ClipType, FillRule, type Path64 } from 'clipper2-ts';
import { type Box, bounds } from './bounds.ts';
import type { Ring } from './Ring.ts';
import type { Shape } from './Shape.ts';
import { shapesOf } from './shapesOf.ts';
import { shortcutOutside } from './shortcutOutside.ts';

/** The three ways in which two sets of rings are laid over one another. */
export type Overlay = 'intersect' | 'subtract' | 'unite';

const CLIP_TYPE = {
  intersect: ClipType.Intersection,
  subtract: ClipType.Difference,
  unite: ClipType.Union,
} as const;

/**
 * Two sets of rings, holes among them, laid over one another. Shapes of one set may overlap. The result
 * is split into connected shapes, its corners rounded to whole ticks.
 *
 * @example overlay('subtract', [[[0, 0], [9, 0], [9, 9], [0, 9]]], [[[0, 0], [9, 0], [9, 5], [0, 5]]]) //=> [{outer: [[0, 5], [9, 5], [9, 9], [0, 9]], holes: []}]
 */
export function overlay(how: Overlay, a: readonly Ring[], b: readonly Ring[]): Shape[] {
  const paths = booleanOp(CLIP_TYPE[how], a.map(pathOf), b.map(pathOf), FillRule.NonZero);
  return shapesOf(paths.map((path) => path.map(({ x, y }) => [x, y] as const)));
}

function pathOf(ring: Ring): Path64 {
  return ring.map(([x, y]) => ({ x: Math.round(x), y: Math.round(y) }));
}

/**
 * All rings of some shapes, outer ones and holes.
 *
 * @example ringsOf([{outer: [[0, 0], [9, 0], [9, 9]], holes: []}]) //=> [[[0, 0], [9, 0], [9, 9]]]
 */
export function ringsOf(shapes: readonly Shape[]): Ring[] {
  return shapes.flatMap((shape) => [shape.outer, ...shape.holes]);
}

/**
 * What of some rings matters within a box, with as few points as may be.
 *
 * @example ringsNear([[[0, 0], [9, 0], [9, 9]]], {minX: 20, minY: 0, maxX: 30, maxY: 9}) //=> []
 */
export function ringsNear(rings: readonly Ring[], box: Box): Ring[] {
  return rings.map((ring) => shortcutOutside(ring, box)).filter((ring) => ring.length > 2);
}

/**
 * The box round the outer rings of some shapes.
 *
 * @example boxOf([{outer: [[0, 0], [9, 0], [9, 9]], holes: []}]) //=> {minX: 0, minY: 0, maxX: 9, maxY: 9}
 */
export function boxOf(shapes: readonly Shape[]): Box {
  return bounds(shapes.map((shape) => shape.outer));
}
