import type { Ring, Shape } from '../../geometry/index.ts';
import type { Ticks } from '../../measure/index.ts';
import type { Place } from './Lattice.ts';

/** A piece as the pattern and the room make it, before it has a name. */
export interface LaidPiece {
  readonly place: Place;
  /** The whole tile in place. */
  readonly ring: Ring;
  readonly shape: Shape;
  readonly whole: boolean;
  /** Faces that cut it, by their place in the list. */
  readonly faces: readonly number[];
  /** Largest extent along x and y of the frame, and the same as shares of the tile. */
  readonly extent: readonly [Ticks, Ticks];
  readonly shares: readonly [number, number];
  readonly seen: 'hidden' | 'plain' | 'focal';
  /** Length of the sawn edges. */
  readonly sawn: Ticks;
  /** Has a notch, a hole or a curve. */
  readonly hard: boolean;
  /** Least width of tile beside an opening. */
  readonly web: Ticks | null;
  /** For a whole tile that reaches into a gap: the gap that is left, and at which face. */
  readonly kept?: { readonly face: number; readonly gap: Ticks };
}

/** A part of the field that stays without tile on purpose. */
export interface LeftPart {
  readonly place: Place;
  readonly shape: Shape;
  readonly face: number;
  readonly gap: Ticks;
}
