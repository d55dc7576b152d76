import type { Point } from '../geometry/index.ts';
import type { Ticks } from '../measure/index.ts';

/** What was found on the base of one floor, where it lies; points in ticks, in the same frame as the floor's outline. */
export interface PlacedBase {
  readonly cracks: readonly PlacedCrack[];
  readonly hollow: readonly PlacedHollow[];
  readonly joints: readonly PlacedJoint[];
  readonly readings: readonly PlacedReading[];
}

export interface PlacedCrack {
  readonly where: string;
  readonly moving: boolean;
  readonly line: readonly Point[];
}

export interface PlacedHollow {
  readonly where: string;
  readonly at: Point;
  readonly across?: Ticks;
}

/** A joint of the base from one end of the floor to the other. */
export interface PlacedJoint {
  readonly wall: string;
  readonly distance: Ticks;
  readonly from: Point;
  readonly to: Point;
}

/** A flatness reading: the how manieth row and reading, from 1, where it lies, and the height of the floor there. */
export interface PlacedReading {
  readonly row: number;
  readonly number: number;
  readonly at: Point;
  readonly height: Ticks;
}
