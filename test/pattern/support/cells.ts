import type { Pattern } from '../../../src/pattern/index.ts';

type Point = readonly [number, number];
type Ring = readonly Point[];

const cross = ([ax, ay]: Point, [bx, by]: Point) => ax * by - ay * bx;

export function areaOf(ring: Ring): number {
  return ring.reduce((sum, p, i) => sum + cross(p, ring[(i + 1) % ring.length]!), 0) / 2;
}

export function repeatArea({ a, b }: Pick<Pattern, 'a' | 'b'>): number {
  return cross(a, b);
}

/** A convex ring with each side moved out by `by`. */
export function grown(ring: Ring, by: number): Ring {
  const lines = ring.map((p, i) => {
    const q = ring[(i + 1) % ring.length]!;
    const length = Math.hypot(q[0] - p[0], q[1] - p[1]);
    const out: Point = [(q[1] - p[1]) / length, (p[0] - q[0]) / length];
    return { out, off: out[0] * p[0] + out[1] * p[1] + by };
  });
  return lines.map(({ out, off }, i) => {
    const before = lines[(i + lines.length - 1) % lines.length]!;
    const det = cross(before.out, out);
    return [
      (before.off * out[1] - off * before.out[1]) / det,
      (before.out[0] * off - out[0] * before.off) / det,
    ];
  });
}

/** The area that two convex rings have in common. */
export function sharedArea(one: Ring, other: Ring): number {
  let rest: Ring = one;
  other.forEach((p, i) => {
    const q = other[(i + 1) % other.length]!;
    const inside = (r: Point) => cross([q[0] - p[0], q[1] - p[1]], [r[0] - p[0], r[1] - p[1]]);
    rest = rest.flatMap((r, at): Point[] => {
      const next = rest[(at + 1) % rest.length]!;
      const [s, t] = [inside(r), inside(next)];
      const meet: Point = [r[0] + (s / (s - t)) * (next[0] - r[0]), r[1] + (s / (s - t)) * (next[1] - r[1])];
      return [...(s >= 0 ? [r] : []), ...(s >= 0 !== t >= 0 ? [meet] : [])];
    });
  });
  return rest.length < 3 ? 0 : areaOf(rest);
}

/** Every tile of the repeats up to `reach` away, by the tile it is and how far it is moved. */
export function around({ a, b, tiles }: Pattern, reach: number) {
  const steps = Array.from({ length: 2 * reach + 1 }, (_, at) => at - reach);
  return steps.flatMap((i) =>
    steps.flatMap((j) =>
      tiles.map(({ ring }, k) => {
        const [x, y] = [i * a[0] + j * b[0], i * a[1] + j * b[1]];
        return { k, i, j, ring: ring.map(([u, v]): Point => [u + x, v + y]) };
      }),
    ),
  );
}

const PLACES = [0.1, 0.34, 0.5, 0.66, 0.9];

/**
 * Distances square out of a tile to the next one, at several places along each side; infinite where none comes. A ray may run into the
 * joint between two neighbours, so the nearest of five counts, the outer of which lie farther apart than a joint is wide.
 */
export function jointsFrom(ring: Ring, others: readonly Ring[], joint: number): number[] {
  return ring.flatMap((p, i) => {
    const q = ring[(i + 1) % ring.length]!;
    const length = Math.hypot(q[0] - p[0], q[1] - p[1]);
    const along: Point = [(q[0] - p[0]) / length, (q[1] - p[1]) / length];
    const out: Point = [along[1], -along[0]];
    return PLACES.map((place) => {
      const steps = [-1.5, -0.75, 0, 0.75, 1.5].map((step) =>
        Math.min(length, Math.max(0, place * length + step * joint)),
      );
      const rays = steps.map((at): Point => [p[0] + at * along[0], p[1] + at * along[1]]);
      return Math.min(...rays.map((from) => nearest(from, out, others)));
    });
  });
}

/** How far from a point the first side of a ring is, in one direction; infinite where none comes. Asked a million times: plain numbers. */
function nearest([x, y]: Point, [wayX, wayY]: Point, rings: readonly Ring[]): number {
  let least = Number.POSITIVE_INFINITY;
  for (const ring of rings) {
    let [px, py] = ring.at(-1)!;
    for (const [qx, qy] of ring) {
      const [edgeX, edgeY] = [qx - px, qy - py];
      const det = wayX * edgeY - wayY * edgeX;
      const reach = ((px - x) * edgeY - (py - y) * edgeX) / det;
      const part = ((px - x) * wayY - (py - y) * wayX) / det;
      if (Math.abs(det) >= 1e-9 && reach > 0 && part >= 0 && part <= 1 && reach < least) least = reach;
      [px, py] = [qx, qy];
    }
  }
  return least;
}
