import { side } from '../geometry/index.ts';
import type { OutlineEdge } from './Outline.ts';

/** An edge counts as square to the tile up to this slope, about 15°: beyond it a piece is marked by its corners. */
const SLOPE = 0.27;

/** How an edge lies: `x` where it is near vertical, so that it ends the piece along x; `y` near horizontal; else `oblique`. */
export type EdgeAxis = 'x' | 'y' | 'oblique';

/**
 * Which way an edge ends a piece.
 *
 * @example axisOf({ from: [90, 0], to: [92, 100], what: 'sawn' }) //=> 'x'
 * @example axisOf({ from: [90, 0], to: [0, 90], what: 'sawn' }) //=> 'oblique'
 */
export function axisOf({ from, to }: OutlineEdge): EdgeAxis {
  const [dx, dy] = [Math.abs(to[0] - from[0]), Math.abs(to[1] - from[1])];
  if (dx <= SLOPE * dy) return 'x';
  return dy <= SLOPE * dx ? 'y' : 'oblique';
}

/**
 * Whether a near square edge faces to the right or up (1), or to the left or down (-1), the piece being on its left.
 *
 * @example facing({ from: [90, 0], to: [92, 100], what: 'sawn' }) //=> 1
 */
export function facing(edge: OutlineEdge): 1 | -1 {
  const way = axisOf(edge) === 'x' ? edge.to[1] - edge.from[1] : edge.from[0] - edge.to[0];
  return way > 0 ? 1 : -1;
}

/**
 * Indices of the edges that start at an inner corner, one where the outline turns right.
 *
 * @example innerCorners([{ from: [0, 0], to: [9, 0], what: 'sawn' }, { from: [9, 0], to: [0, 9], what: 'sawn' }, { from: [0, 9], to: [0, 0], what: 'sawn' }]) //=> []
 */
export function innerCorners(edges: readonly OutlineEdge[]): number[] {
  return edges.flatMap((edge, i) => {
    const before = edges[(i + edges.length - 1) % edges.length]!;
    return side(before.from, edge.from, edge.to) < 0 ? [i] : [];
  });
}
