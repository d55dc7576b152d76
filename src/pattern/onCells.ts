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
}

/**
 * A pattern of rectangles: each tile in the middle of its place, what it lacks shared by the joints at both
 * ends. Pieces are counted by the place of their lower left corner in steps, which no two tiles share as
 * long as no tile is smaller than a step.
 */
export function onCells(of: Cells): Pattern {
  const { name, a, b, joint, step, cells, straight = false, module = step } = of;
  const first = cells[0]!.at;
  const tiles = cells.map((cell): PatternTile => {
    const { quarter, sides } = lying(cell);
    const [x, y] = [0, 1].map((axis) => middle(cell.at[axis]!, cell.size[axis]! - joint - sides[axis]!));
    const counted = (axis: 0 | 1) =>
      [a[axis] / step[axis], b[axis] / step[axis], (cell.at[axis] - first[axis]) / step[axis]] as const;
    return {
      tile: cell.tile.key,
      ring: tileRing([x!, y!], ...sides),
      quarter,
      column: counted(0),
      row: counted(1),
    };
  });
  const base = { name, a, b, tiles, joint, module, step, straightX: straight, straightY: straight };
  const closing = closingOf(base, cells);
  return { ...base, inCourses: false, ...(closing && { closing }) };
}

/** How a tile lies in its place, longer side along longer side, and its extents there. */
function lying({ tile, size }: Cell): { readonly quarter: 0 | 1; readonly sides: [Ticks, Ticks] } {
  const along = size[0] >= size[1] === tile.length >= tile.width;
  return along
    ? { quarter: 0, sides: [tile.length, tile.width] }
    : { quarter: 1, sides: [tile.width, tile.length] };
}

function middle(at: Ticks, slack: Ticks): Ticks {
  return at + Math.floor(slack / 2);
}
