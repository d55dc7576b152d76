import { type Point, type Ring, side } from '../../geometry/index.ts';

/** The part of a segment that runs through the inside of a tile, and where it comes in and goes out. */
export interface Through {
  readonly from: number;
  readonly to: number;
  /** Edge of the tile at which it comes in and goes out; −1 where the segment begins or ends inside. */
  readonly inAt: number;
  readonly outAt: number;
}

/**
 * The part of segment a–b inside a convex counter-clockwise ring, as parts of the segment's length; null
 * where it passes by, touches, or runs along an edge.
 *
 * @example throughTile([[0, 0], [10, 0], [10, 10], [0, 10]], [5, -5], [5, 5]) //=> { from: 0.5, to: 1, inAt: 0, outAt: -1 }
 * @example throughTile([[0, 0], [10, 0], [10, 10], [0, 10]], [-5, 10], [15, 10]) //=> null
 */
export function throughTile(ring: Ring, a: Point, b: Point): Through | null {
  let [from, to, inAt, outAt] = [0, 1, -1, -1];
  const n = ring.length;
  for (let i = 0; i < n; i++) {
    const p = ring[i]!;
    const q = ring[i + 1 === n ? 0 : i + 1]!;
    const [s, t] = [side(p, q, a), side(p, q, b)];
    if (s <= 0 && t <= 0) return null;
    if (s <= 0 && (inAt < 0 || s / (s - t) > from)) [from, inAt] = [s / (s - t), i];
    else if (t <= 0 && (outAt < 0 || s / (s - t) < to)) [to, outAt] = [s / (s - t), i];
    if (from >= to) return null;
  }
  return { from, to, inAt, outAt };
}
