import type { Point } from '../../geometry/index.ts';
import type { Ticks } from '../../measure/index.ts';

/** The soft joints of a floor that is longer than one bay, in the pattern's frame. */
export interface Movement {
  /** Most between two soft joints, or between one and the field's edge, along and square to the first wall. */
  readonly limit: Ticks;
  readonly lines: readonly MovementLine[];
  /** Axes on which the floor needs soft joints and none of the pattern's joints can be one. */
  readonly missing: readonly { readonly axis: 'along' | 'across'; readonly bays: number }[];
  /** Whether the pieces stand apart by these widths; else the tile beside a line that is wider than the grout joint is to be sawn. */
  readonly laid: boolean;
}

/** A soft joint through the whole field, on a straight joint of the pattern. */
export interface MovementLine {
  /** The axis on which it has one place: a line `along` stands upright in the frame. */
  readonly axis: 'along' | 'across';
  /** The middle of its joint on that axis. */
  readonly at: Ticks;
  /** How many joints, and how far, it lies from the chalk line of that axis, with a sign. */
  readonly steps: number;
  readonly distance: Ticks;
  /** Over a joint of the base, or nearest to one; beside a corner round which the tile turns; or where it makes bays even. */
  readonly why: 'baseJoint' | 'nearBaseJoint' | 'corner' | 'even';
  readonly width: Ticks;
  /** Where it runs: more than one part where an obstacle or a corner lies between. */
  readonly parts: readonly { readonly from: Point; readonly to: Point }[];
  /** Of all parts together. */
  readonly length: Ticks;
}
