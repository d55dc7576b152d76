import type { Point, Ring } from '../geometry/index.ts';

/** A pattern as pure repetition: tile k of repeat (i, j) stands at `i·a + j·b` plus its own place. All in ticks. */
export interface Pattern {
  readonly name: string;
  readonly a: Point;
  readonly b: Point;
  readonly tiles: readonly PatternTile[];
  readonly joint: number;
  /** Spacing of the straight joints along x and y of the frame, where there are any: used by chalk lines, zones and rows. */
  readonly module: Point;
  /** True when a joint runs straight through on that axis: lines x = const (vertical) and y = const (horizontal). */
  readonly straightX: boolean;
  readonly straightY: boolean;
}

export interface PatternTile {
  /** Key of the tile in the job. */
  readonly tile: string;
  /** Convex, counter-clockwise, in the repeat's own place. */
  readonly ring: Ring;
  /** Quarter turns of the tile's own axes to the frame: 0 lies along x, 1 stands. */
  readonly quarter: 0 | 1 | 2 | 3;
  /** Column and row of tile k in repeat (i, j): `column = i·ci + cj·j + c0`, and so for rows; they name the piece. */
  readonly column: readonly [ci: number, cj: number, c0: number];
  readonly row: readonly [ri: number, rj: number, r0: number];
}
