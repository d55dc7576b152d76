import type { Point, Shape } from '../geometry/index.ts';
import type { Ticks } from '../measure/index.ts';

/** Cuts that share saw sizes, factory edges, hand and tile. Shape in the tile's own axes: origin at its lower left corner, x along its length. */
export interface Cut {
  readonly number: number;
  readonly tile: string;
  readonly kind: CutKind;
  /** Handed shapes differ from their mirror image. */
  readonly hand: 'none' | 'left' | 'right';
  readonly pieces: readonly string[];
  /** Turn, one a piece, that brings `shape` from these axes to the piece's own place in its tile. */
  readonly turns?: readonly (0 | 90 | 180 | 270)[];
  /** Exact shape of the first piece. */
  readonly shape: Shape;
  readonly circles: readonly { readonly centre: Point; readonly radius: Ticks; readonly name: string }[];
  readonly edges: readonly CutEdge[];
  readonly sizes: readonly CutSize[];
  /** Fence settings in the order of sawing: distance from the edge on the fence to the blade, saw value. */
  readonly fences: readonly {
    readonly on: 'left' | 'right' | 'top' | 'bottom';
    readonly exact: Ticks;
    readonly saw: Ticks;
  }[];
  /** Hard cuts get a card, as `isHard` tells. */
  readonly hard: boolean;
  /** Taper of a sawn edge over its length, 0 when square. */
  readonly taper: Ticks;
}

export type CutKind = 'rip' | 'corner' | 'taper' | 'notch' | 'u' | 'hole' | 'curve' | 'point' | 'odd';

export interface CutEdge {
  readonly from: Point;
  readonly to: Point;
  readonly factory: boolean;
  /** Middle of its curve, where it is sawn along a curved wall; the shape follows the curve. */
  readonly via?: Point;
}

export interface CutSize {
  /** Code of what is measured: `width`, `length`, `leftLength`, `rightLength`, `takenAcross`, `takenUp`, `notchWidth`, `notchDepth`, `holeAcross`, `holeUp`, `holeDiameter`, … */
  readonly what: string;
  /** Factory edge it is measured from: `left`, `right`, `top`, `bottom`, or `none` for a diameter. */
  readonly from: 'left' | 'right' | 'top' | 'bottom' | 'none';
  readonly exact: Ticks;
  readonly saw: Ticks;
  /** Ends of the dimension in the tile's own axes, for drawing. */
  readonly at: readonly [Point, Point];
}

/** One straight line through a course, wall to wall; Σ exact = Σ saw = its length, in ticks. */
export interface Row {
  readonly id: string;
  readonly axis: 'along' | 'across';
  readonly from: Point;
  readonly to: Point;
  readonly edges: readonly [string, string];
  readonly terms: readonly RowTerm[];
}

export interface RowTerm {
  readonly what: 'gap' | 'piece' | 'joint';
  /** Piece or edge id; empty for a joint. */
  readonly id: string;
  readonly exact: Ticks;
  readonly saw: Ticks;
}

export interface Cuts {
  readonly surface: string;
  readonly cuts: readonly Cut[];
  readonly rows: readonly Row[];
}
