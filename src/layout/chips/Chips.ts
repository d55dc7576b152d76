import type { Ticks } from '../../measure/index.ts';

/** Mosaic on sheets: the chips of one sheet, and the walls along which sheets are cut between them. */
export interface Chips {
  /** How many lie along a sheet's length and width. */
  readonly count: readonly [number, number];
  /** Edges along which the gap is so much wider that no chip is sawn. */
  readonly between: readonly { readonly edge: string; readonly gap: Ticks }[];
}
