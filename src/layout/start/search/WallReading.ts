import type { Point } from '../../../geometry/index.ts';
import type { CutProfile } from './cutProfile.ts';

/** A place on a wall where the cut is read, square to a direction in which the pattern repeats. */
export interface WallReading {
  /** Coordinate along the inward normal. */
  readonly at: number;
  /** Which way the floor lies: 1 along the direction's normal, -1 against it. */
  readonly side: 1 | -1;
  /** Length of wall that it stands for, doubled where the eye falls on it; in ticks. */
  readonly length: number;
  /** A strip of no more than this is left out as gap; a tile that loses no more than `kept` stays whole. */
  readonly absent: number;
  readonly kept: number;
  /** Whether the wall is long enough for its narrowest cut to count. */
  readonly counts: boolean;
}

/** A direction in which the pattern repeats, with all walls that lie along it. */
export interface WallDirection {
  /** Unit vector square to the walls. */
  readonly normal: Point;
  /** Moved by so much along the normal the pattern looks the same to these walls. */
  readonly spacing: number;
  /** Chalk lines are taken to stand within so much of their place; a strip must be wider than the least, and a half may lack, by `margin` more. */
  readonly setOut: number;
  readonly margin: number;
  /** The tiles of a repeat, seen with the floor ahead along the normal and against it. */
  readonly ahead: readonly CutProfile[];
  readonly behind: readonly CutProfile[];
  readonly readings: readonly WallReading[];
}
