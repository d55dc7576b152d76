import type { Point } from '../../geometry/index.ts';
import type { Ticks } from '../../measure/index.ts';
import type { AxisStart } from '../Layout.ts';
import type { FacingRun } from './findRuns.ts';

/** One place where the pattern may start, and what that means on each axis. */
export interface Choice {
  readonly origin: Point;
  readonly along: AxisStart;
  readonly across: AxisStart;
  /** How far it is off balance, both axes together. */
  readonly shift: Ticks;
}

/** The two axes of the frame: along the tile's length, which is x, and across, which is y. */
export const AXES = ['along', 'across'] as const;
export type Axis = (typeof AXES)[number];

/** The run that decides each axis: its two faces and where the field ends at them. */
export interface MainRuns {
  readonly along: FacingRun;
  readonly across: FacingRun;
}
