import { type Point, type Ring, translate } from '../../geometry/index.ts';
import type { Pattern } from '../../pattern/Pattern.ts';
import type { WideJoint } from '../movement/WideJoint.ts';
import { baysOf, isInBay } from './Bay.ts';

/** Tile `k` of repeat (i, j). */
export interface Place {
  readonly k: number;
  readonly i: number;
  readonly j: number;
}

/** A pattern standing at an origin, with what is needed to find the tiles near a point fast. */
export interface Lattice {
  readonly pattern: Pattern;
  readonly origin: Point;
  /** Joints at which it is pulled apart; only rings in place know of them. */
  readonly wide: readonly WideJoint[];
  /** Repeats as measured by both vectors: (u, v) of a point in the frame. */
  readonly repeatsAt: (point: Point) => Point;
  /** For each tile of the repeat, the box of its ring and its centre in repeats. */
  readonly boxes: readonly { readonly min: Point; readonly max: Point; readonly centre: Point }[];
}

/** A pattern put down with repeat (0, 0) at `origin`, and pulled apart at its wide joints. */
export function makeLattice(pattern: Pattern, origin: Point, wide: readonly WideJoint[] = []): Lattice {
  const { a, b } = pattern;
  const area = a[0] * b[1] - a[1] * b[0];
  const inRepeats = (x: number, y: number): Point => [
    (x * b[1] - y * b[0]) / area,
    (y * a[0] - x * a[1]) / area,
  ];
  const boxes = pattern.tiles.map(({ ring }) => {
    const points = ring.map(([x, y]) => inRepeats(x, y));
    const min: Point = [Math.min(...points.map((p) => p[0])), Math.min(...points.map((p) => p[1]))];
    const max: Point = [Math.max(...points.map((p) => p[0])), Math.max(...points.map((p) => p[1]))];
    return { min, max, centre: [(min[0] + max[0]) / 2, (min[1] + max[1]) / 2] as Point };
  });
  const repeatsAt = (p: Point) => inRepeats(p[0] - origin[0], p[1] - origin[1]);
  return { pattern, origin, wide, repeatsAt, boxes };
}

/** The ring of a tile in place. Its position is i·a + j·b, never added up step by step; then its bay is moved. */
export function ringAt(lattice: Lattice, place: Place): Ring {
  const { wide } = lattice;
  const ring = repeatedAt(lattice, place);
  const bay = wide.length === 0 ? undefined : baysOf(wide).find((one) => isInBay(one, ring));
  return bay ? ring.map((point) => translate(point, bay.shift)) : ring;
}

/** The ring of a tile in the pattern as it repeats. */
export function repeatedAt(
  { pattern: { a, b, tiles }, origin }: Pick<Lattice, 'pattern' | 'origin'>,
  { k, i, j }: Place,
): Ring {
  const by: Point = [origin[0] + i * a[0] + j * b[0], origin[1] + i * a[1] + j * b[1]];
  return tiles[k]!.ring.map((point) => translate(point, by));
}

/** One number for a place, so that places can be looked up; i and j within a million either way. */
export function keyOf({ k, i, j }: Place): number {
  return (k * 2097152 + (j + 1048576)) * 2097152 + (i + 1048576);
}
