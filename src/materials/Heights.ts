import type { Ticks } from '../measure/index.ts';

/** Heights above the bare base, and what follows for each thing that was measured. */
export interface Heights {
  readonly stack: Ticks;
  readonly removed: Ticks;
  readonly undercut: Ticks;
  readonly results: readonly HeightResult[];
  /** What nobody has measured yet and what must be known before tile is ordered. */
  readonly toMeasure?: readonly ToMeasure[];
}

export interface ToMeasure {
  /** The doorway, the obstacle or what comes out. */
  readonly name: string;
  readonly code:
    | 'height.measure.floor'
    | 'height.measure.door'
    | 'height.measure.flange'
    | 'height.measure.drain'
    | 'height.measure.appliance';
}

export interface HeightResult {
  readonly name: string;
  readonly kind: string;
  /** Now, above the finished tile when negative it is below. */
  readonly after: Ticks;
  readonly pass: boolean;
  readonly code: string;
  readonly figures: Readonly<Record<string, number | string>>;
}
