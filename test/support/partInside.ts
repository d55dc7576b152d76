import type { Point, Ring } from '../../src/geometry/index.ts';

/** The part of a convex ring where `inside`, which changes evenly over the plane, is not negative. */
export function partInside(ring: Ring, inside: (point: Point) => number): Ring {
  return ring.flatMap((from, i): Point[] => {
    const to = ring[(i + 1) % ring.length]!;
    const [p, q] = [inside(from), inside(to)];
    const share = p / (p - q);
    const crossing: Point[] =
      p * q < 0 ? [[from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1])]] : [];
    return p >= 0 ? [from, ...crossing] : crossing;
  });
}
