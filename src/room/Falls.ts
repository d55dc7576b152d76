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
  /** Drains that it does not fall to; missing where there are none. */
  readonly others?: readonly OtherDrain[];
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

/** A drain that the floor does not fall to. */
export interface OtherDrain {
  readonly name: string;
  /** How high the fall stands at its upper edge, as part of how high it stands at the walls; missing where that is no simple sum. */
  readonly share?: number;
}
