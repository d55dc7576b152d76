import type { Ticks } from '../measure/index.ts';
import type { Orientation } from './pickScale.ts';

export type Side = 'left' | 'right' | 'below' | 'above';

/** A rectangle of a plan that stands on a page of its own. */
export interface PlanPart {
  /** From 1, as one reads: from the left, the upper row first. */
  readonly number: number;
  /** Where it lies, in ticks of the room's frame from the lower left of the room. */
  readonly window: {
    readonly left: Ticks;
    readonly bottom: Ticks;
    readonly right: Ticks;
    readonly top: Ticks;
  };
  /** Number of the part beyond each side; none beyond a side where the plan ends. */
  readonly next: Readonly<Partial<Record<Side, number>>>;
}

/** A plan that is too large for one page, in parts at one scale. */
export interface PlanParts {
  readonly ratio: number;
  readonly orientation: Orientation;
  /** Paper round each part in mm. */
  readonly border: number;
  readonly parts: readonly PlanPart[];
}
