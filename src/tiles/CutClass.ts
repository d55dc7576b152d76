import type { Cut } from '../cuts/Cut.ts';
import type { TileBox, Turn } from '../cuts/TileBox.ts';
import type { Ring, Shape } from '../geometry/index.ts';

/** The pieces of one cut, which are alike to what the saw's step hides. */
export interface CutClass {
  readonly id: number;
  readonly cut: Cut;
  /** Names of its pieces; with the surface in front where the job has several. */
  readonly pieces: readonly string[];
  readonly box: TileBox;
  readonly turns: readonly Turn[];
  /** Convex ring that holds every piece, and a shape that every piece holds. */
  readonly around: Ring;
  readonly within: Shape;
  /** Largest and smallest area of a piece, in square ticks. */
  readonly area: number;
  readonly leastArea: number;
  /** False where a hole, an arc or an inner corner takes a tile for itself. */
  readonly shares: boolean;
  /** Factory edges in two directions fix its place in the tile but for turns. */
  readonly pinned: boolean;
}

/** A class turned in a tile: its ring there and the corners of the tile it takes, a bit each. */
export interface Placement {
  readonly of: CutClass;
  readonly turn: Turn;
  readonly ring: Ring;
  readonly corners: number;
}
