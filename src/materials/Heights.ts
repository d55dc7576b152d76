import type { Ticks } from '../measure/index.ts';

/** Heights above the bare base, and what follows for each thing that was measured. */
export interface Heights {
  readonly stack: Ticks;
  readonly removed: Ticks;
  readonly undercut: Ticks;
  readonly results: readonly HeightResult[];
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
