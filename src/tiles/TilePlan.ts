import type { Point } from '../geometry/index.ts';
import type { TileTurn } from './TileTurn.ts';

/** How many tiles of one kind, and which piece comes out of which tile. */
export interface TilePlan {
  readonly tile: string;
  readonly whole: number;
  readonly cut: number;
  /** Whole tiles to take from the box to lay everything: whole + tiles that are cut. */
  readonly needed: number;
  /** No plan can do with fewer than this. */
  readonly bound: number;
  /** Whether the plan is proved to be one of the fewest tiles; with the prices that show it, missing in older packets. */
  readonly proved?: boolean;
  readonly prices?: TilePrices;
  /** Tiles that are sawn, numbered as they are first needed. */
  readonly from: readonly CutTile[];
  /** Offcuts that wait at most at a time, and what either plan comes to; missing in older packets. */
  readonly pile?: number;
  readonly plans?: {
    readonly chosen: 'fewestTiles' | 'smallestPile';
    readonly fewestTiles: { readonly needed: number; readonly pile: number };
    readonly smallestPile: { readonly needed: number; readonly pile: number };
  };
  /** Tiles added for breakage, a spare for each cut into a tile, and for the owner to keep. */
  readonly breakage: number;
  readonly spare: number;
  readonly keep: number;
  readonly onHand: number;
  readonly buy: number;
  readonly boxes: number;
  /** Pieces over after whole boxes. */
  readonly over: number;
  readonly price?: number;
}

/**
 * Prices in parts of a tile, chosen so that the pieces of no tile cost more than `over` parts, whichever they are and however they
 * are turned: all pieces together need at least as many tiles as they cost. A whole tile costs `over`; what is not named nothing.
 */
export interface TilePrices {
  readonly over: number;
  readonly each: readonly {
    readonly price: number;
    readonly cut: number;
    readonly pieces: readonly string[];
    /** Whether these are all pieces of the cut. */
    readonly all: boolean;
  }[];
  /** Pieces of which every two in a tile cost this much more, and one left over as well; they need `tiles` tiles at least. */
  readonly groups: readonly {
    readonly price: number;
    readonly pieces: readonly string[];
    readonly tiles: number;
  }[];
}

export interface CutTile {
  /** Number written on the tile: `T1`, `T2`, … */
  readonly tile: string;
  /** Each piece as its cut's shape turned counter-clockwise about the origin by `turn`, then moved by `at`, in the tile's own axes. */
  readonly pieces: readonly {
    readonly piece: string;
    readonly cut: number;
    readonly at: Point;
    readonly turn: TileTurn;
  }[];
}
