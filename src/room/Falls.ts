import type { Point } from '../geometry/index.ts';
import type { Ticks } from '../measure/index.ts';

/** How a floor falls to its drain: one plane a wall, level along it. */
export interface Falls {
  /** Name of the drain. */
  readonly drain: string;
  readonly planes: readonly Plane[];
  /** Where two planes meet: from the middle of a round drain, or its nearest corner, to the corner between their walls. */
  readonly folds: readonly Fold[];
  /** Whether tile is cut along the folds. */
  readonly cut: boolean;
}

export interface Plane {
  readonly wall: string;
  /** From the wall's line square to the nearest point of the drain. */
  readonly run: Ticks;
}

export interface Fold {
  readonly corner: string;
  readonly from: Point;
  readonly to: Point;
}
