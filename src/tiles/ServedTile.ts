import type { Placement } from './CutClass.ts';

/** One place in a tile with the piece that comes out of it: which of its class, and when it is set among all that are sawn. */
export interface Slot {
  readonly at: Placement;
  readonly which: number;
  readonly when: number;
}

/** A tile with its pieces told one by one. */
export type ServedTile = readonly Slot[];
