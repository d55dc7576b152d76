import type { Cut } from '../cuts/Cut.ts';
import type { TileBox } from '../cuts/TileBox.ts';
import type { Point, Ring } from '../geometry/index.ts';
import type { TileTurn } from './TileTurn.ts';

/** Pieces that are alike to the tick. */
export interface PieceClass {
  readonly id: number;
  /** Names of its pieces; with the surface in front where the job has several. */
  readonly pieces: readonly string[];
  readonly box: TileBox;
  readonly turns: readonly TileTurn[];
  /** The piece in the axes of its cut, its notches filled in: straight cuts across a tile free no less of it. */
  readonly ring: Ring;
  /** Area of the ring, in square ticks. */
  readonly area: number;
  readonly slides: Slides;
}

/** The pieces of one cut that are alike to the tick. */
export interface CutClass extends PieceClass {
  readonly cut: Cut;
}

/** Along which sides of its tile a piece may slide with its factory edges still on them: none where those have two directions. */
export interface Slides {
  readonly along: boolean;
  readonly across: boolean;
}

/** A class as it lies in a tile: turned, and moved from its own place where it slides. */
export interface Placement {
  readonly of: PieceClass;
  readonly turn: TileTurn;
  readonly slid: Point;
  readonly ring: Ring;
  /** How it may still be moved. */
  readonly slides: Slides;
  /** The corners of the tile that it takes wherever it slides, a bit each. */
  readonly corners: number;
}
