import {
  bounds,
  convexHull,
  narrowness,
  outsetByEdge,
  type Point,
  type Ring,
} from '../../../geometry/index.ts';
import { leastCut } from '../../faults/limits.ts';

/**
 * What a straight wall leaves of a tile, by how deep the tile reaches past it: `depths` rise from 0 to all of the tile, with the
 * extents of what is left along x and y of the frame there; between two of them everything changes evenly.
 */
export interface CutProfile {
  /** Coordinate along the normal of the tile's farthest corner, the pattern standing at 0. */
  readonly top: number;
  readonly depth: number;
  readonly depths: readonly number[];
  readonly extents: readonly Point[];
  /** Sides of the tile, the least cut of each that is no fault, and the depth at which what is left is no strip any more. */
  readonly sides: Point;
  readonly least: Point;
  readonly strip: number;
  /** Share of a wall that this tile takes up, at depths of its module: the tile with half a joint round it. */
  readonly cell: { readonly depths: readonly number[]; readonly shares: readonly number[] };
}

/** What a profile is made from; lengths in ticks. */
export interface ProfileSpec {
  readonly ring: Ring;
  readonly joint: number;
  /** Length of wall after which the pattern repeats. */
  readonly repeat: number;
  readonly minShare: number;
  readonly strip: number;
}

/** The profile of a tile against walls whose inward normal is `normal`, a unit vector; of its hull, as rounding may leave a dent in a tile. */
export function cutProfile(
  { ring: given, joint, repeat, minShare, strip }: ProfileSpec,
  normal: Point,
): CutProfile {
  const ring = convexHull(given);
  const { minX, minY, maxX, maxY } = bounds(ring);
  const sides: Point = [maxX - minX, maxY - minY];
  const top = Math.max(...ring.map((point) => along(point, normal)));
  const depths = depthsOf(ring, normal, top);
  const cell =
    joint > 0
      ? outsetByEdge(
          ring,
          ring.map(() => Math.round(joint / 2)),
        )
      : ring;
  const cellDepths = depthsOf(cell, normal, top);
  return {
    top,
    depth: depths.at(-1)!,
    depths,
    extents: depths.map((depth) => extentsAbove(ring, normal, top - depth)),
    sides,
    least: [leastCut(sides[0], joint, minShare), leastCut(sides[1], joint, minShare)],
    strip: stripDepth(ring, normal, top, strip),
    cell: {
      depths: cellDepths,
      shares: cellDepths.map((depth) => chordAt(cell, normal, top - depth) / repeat),
    },
  };
}

function along([x, y]: Point, [nx, ny]: Point): number {
  return x * nx + y * ny;
}

/** Depths at which a line square to the normal meets a corner, without those that only rounding tells apart. */
function depthsOf(ring: Ring, normal: Point, top: number): number[] {
  const all = ring.map((point) => top - along(point, normal)).sort((a, b) => a - b);
  return all.filter((depth, i) => i === 0 || depth - all[i - 1]! > 1);
}

/** Extents along x and y of the part of a convex ring that lies above a level of the normal. */
function extentsAbove(ring: Ring, normal: Point, level: number): Point {
  const kept = clipped(ring, normal, level - 0.5);
  const { minX, minY, maxX, maxY } = bounds(kept);
  return [maxX - minX, maxY - minY];
}

function clipped(ring: Ring, normal: Point, level: number): Point[] {
  return ring.flatMap((from, i) => {
    const to = ring[(i + 1) % ring.length]!;
    const [a, b] = [along(from, normal) - level, along(to, normal) - level];
    const points: Point[] = a >= 0 ? [from] : [];
    if (a * b < 0) {
      const part = a / (a - b);
      points.push([from[0] + part * (to[0] - from[0]), from[1] + part * (to[1] - from[1])]);
    }
    return points;
  });
}

/**
 * The depth at which what a wall leaves of a ring passes through no slot narrower than `strip`: that itself, but at a corner so sharp
 * that its tip is narrower than it is long.
 */
function stripDepth(ring: Ring, normal: Point, top: number, strip: number): number {
  const isNarrow = (depth: number) => narrowness(clipped(ring, normal, top - depth)) < strip - 0.5;
  let [low, high] = [strip, top - Math.min(...ring.map((point) => along(point, normal)))];
  if (!isNarrow(low)) return strip;
  while (high - low > 1) {
    const middle = (low + high) / 2;
    if (isNarrow(middle)) low = middle;
    else high = middle;
  }
  return high;
}

/** Length of a line square to the normal inside a convex ring; of a side that lies along it, that side. */
function chordAt(ring: Ring, normal: Point, level: number): number {
  const middle =
    (Math.max(...ring.map((p) => along(p, normal))) + Math.min(...ring.map((p) => along(p, normal)))) / 2;
  const inside = level + Math.sign(middle - level);
  const met = clipped(ring, normal, inside).filter((point) => Math.abs(along(point, normal) - inside) < 0.5);
  const across = met.map((point) => along(point, [-normal[1], normal[0]]));
  return met.length < 2 ? 0 : Math.max(...across) - Math.min(...across);
}
