import type { Point, Ring } from '../geometry/index.ts';
import type { Ticks } from '../measure/index.ts';

/** A pattern as pure repetition: tile k of repeat (i, j) stands at `i·a + j·b` plus its own place. All in ticks; a × b is over 0. */
export interface Pattern {
  readonly name: string;
  readonly a: Point;
  readonly b: Point;
  readonly tiles: readonly PatternTile[];
  readonly joint: number;
  /** Spacing along x and y of the frame of the straight joints, and where there are none of the lines that chalk follows. */
  readonly module: Point;
  /** Along x and y, what columns and rows are counted by; the module where there is none. */
  readonly step?: Point;
  /** True when a joint runs straight through on that axis: lines x = const (vertical) and y = const (horizontal). */
  readonly straightX: boolean;
  readonly straightY: boolean;
  /** True where tiles of one size lie along x, course on course; how such a floor begins can be read off its walls. */
  readonly inCourses: boolean;
  /** Where tiles lie in zigzag, its direction: lower left corners of the first tile of each repeat stand on lines along it. */
  readonly cornersAlong?: Point;
  /** What keeps the joints of this pattern from being of one width, where they are not. */
  readonly closing?: Closing;
}

/** A tile that is too short for its place: joints beside it are wider than the others. */
export interface Closing {
  readonly tile: string;
  readonly side: 'length' | 'width';
  readonly has: Ticks;
  /** The side that would make all joints alike. */
  readonly needs: Ticks;
  /** Narrowest and widest joint of the pattern as it is laid. */
  readonly least: Ticks;
  readonly most: Ticks;
}

export interface PatternTile {
  /** Key of the tile in the job. */
  readonly tile: string;
  /** Convex, counter-clockwise, in the repeat's own place. */
  readonly ring: Ring;
  /** Quarter turns of the tile's own axes to the frame: 0 lies along x, 1 stands. */
  readonly quarter: 0 | 1 | 2 | 3;
  /** Degrees by which it is turned beyond that, counter-clockwise; its ring is then rounded to ticks. */
  readonly slantDeg?: number;
  /** Column and row of tile k in repeat (i, j): `column = i·ci + cj·j + c0`, and so for rows; they name the piece. */
  readonly column: readonly [ci: number, cj: number, c0: number];
  readonly row: readonly [ri: number, rj: number, r0: number];
}
