import type { Point } from '../geometry/index.ts';
import type { Ticks } from '../measure/index.ts';
import type { Cell } from './Cell.ts';
import { closingOf } from './closingOf.ts';
import type { Pattern, PatternTile } from './Pattern.ts';
import { tileRing } from './tileRing.ts';

/** What a pattern of rectangles is made of: repeat vectors, places, and how it is counted and snapped; ticks. */
export interface Cells {
  readonly name: string;
  readonly a: Point;
  readonly b: Point;
  readonly cells: readonly Cell[];
  readonly joint: Ticks;
  readonly step: Point;
  readonly module?: Point;
  readonly straight?: boolean;
  readonly cornersAlong?: Point;
}

/**
 * A pattern of rectangles, its first tile's lower left corner where the repeat stands: each tile in the middle of its
 * place, what it lacks shared by the joints at both ends. Pieces are counted by the place of their lower left corner in steps, which no two tiles share as
 * long as no tile is smaller than a step.
 */
export function onCells(of: Cells): Pattern {
  const { name, a, b, joint, step, cells, straight = false, module = step, cornersAlong } = of;
  const first = cells[0]!.at;
  const [dx, dy] = standing(cells[0]!, joint).at;
  const tiles = cells.map((cell): PatternTile => {
    const { quarter, sides, at } = standing(cell, joint);
    const counted = (axis: 0 | 1) =>
      [a[axis] / step[axis], b[axis] / step[axis], (cell.at[axis] - first[axis]) / step[axis]] as const;
    return {
      tile: cell.tile.key,
      ring: tileRing([at[0] - dx, at[1] - dy], ...sides),
      quarter,
      column: counted(0),
      row: counted(1),
    };
  });
  const base = { name, a, b, tiles, joint, module, step, straightX: straight, straightY: straight };
  const closing = closingOf(base, cells);
  return { ...base, inCourses: false, ...(cornersAlong && { cornersAlong }), ...(closing && { closing }) };
}

/** How a tile lies in the middle of its place, longer side along longer side. */
function standing({ tile, at, size }: Cell, joint: Ticks) {
  const along = size[0] >= size[1] === tile.length >= tile.width;
  const sides: [Ticks, Ticks] = along ? [tile.length, tile.width] : [tile.width, tile.length];
  const middle = (axis: 0 | 1) => at[axis] + Math.floor((size[axis] - joint - sides[axis]) / 2);
  return { quarter: along ? (0 as const) : (1 as const), sides, at: [middle(0), middle(1)] as const };
}
