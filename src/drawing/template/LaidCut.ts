import type { Point, Ring, Shape } from '../../geometry/index.ts';

/** A cut as it lies on the paper at full size: turned, the lower left corner of its tile at the origin, in ticks. */
export interface LaidCut {
  readonly tile: Ring;
  readonly shape: Shape;
  /** What falls off. */
  readonly waste: readonly Shape[];
  readonly edges: readonly LaidEdge[];
  /** Corners where the saw would run past, each with the ways its two edges leave it. */
  readonly inner: readonly { readonly at: Point; readonly ways: readonly [Point, Point] }[];
  /** Middles of true circles. */
  readonly centres: readonly Point[];
}

/** One side of the piece, the piece to its left. */
export interface LaidEdge {
  readonly from: Point;
  readonly to: Point;
  readonly factory: boolean;
  /** Sawn along a circle or into an inner corner: what a straight cut right across does not make. */
  readonly odd: boolean;
}
