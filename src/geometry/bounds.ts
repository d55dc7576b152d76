import type { Point } from './Point.ts';
import type { Ring } from './Ring.ts';

/** The smallest upright rectangle round something, in ticks. */
export interface Box {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}

/**
 * The box round a ring or round several. Of nothing at all it is turned inside out: from Infinity to
 * -Infinity.
 *
 * @example bounds([[0, 0], [4, 1], [2, 3]]) //=> {minX: 0, minY: 0, maxX: 4, maxY: 3}
 * @example bounds([[[0, 0], [4, 1], [2, 3]], [[-1, 9], [0, 9], [0, 10]]]) //=> {minX: -1, minY: 0, maxX: 4, maxY: 10}
 */
export function bounds(rings: Ring | readonly Ring[]): Box {
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const ring of isRing(rings) ? [rings] : rings) {
    // By index: this is asked for every piece that is laid, and an iterator a point would cost more than the comparing.
    for (let i = 0; i < ring.length; i++) {
      const x = ring[i]![0];
      const y = ring[i]![1];
      if (x < minX) minX = x;
      if (x > maxX) maxX = x;
      if (y < minY) minY = y;
      if (y > maxY) maxY = y;
    }
  }
  return { minX, minY, maxX, maxY };
}

function isRing(rings: Ring | readonly Ring[]): rings is Ring {
  return typeof (rings[0] as Point | undefined)?.[0] === 'number';
}

/**
 * Whether two boxes share a point, their edges included.
 *
 * @example boxesMeet({minX: 0, minY: 0, maxX: 4, maxY: 3}, {minX: 4, minY: 3, maxX: 5, maxY: 9}) //=> true
 */
export function boxesMeet(a: Box, b: Box): boolean {
  return a.minX <= b.maxX && b.minX <= a.maxX && a.minY <= b.maxY && b.minY <= a.maxY;
}
