import { bounds, type Point } from '../../geometry/index.ts';
import { columnAndRow } from '../../pattern/index.ts';
import { drawnTogether } from '../movement/drawnTogether.ts';
import type { Lattice, Place } from '../pieces/Lattice.ts';
import type { Steps } from './pieceName.ts';

/** Rounding of a division must not put a whole number of modules one lower. */
const HAIR = 1e-9;

/**
 * How columns and rows count from the crossing of the chalk lines: its joints have the first column on their
 * right and the first row above them.
 */
export function stepsFrom(crossing: Point, { pattern, origin, wide }: Lattice): (place: Place) => Steps {
  const { module, step = module, tiles, joint } = pattern;
  const { minX: left, minY: bottom } = bounds(tiles[0]!.ring);
  const first = (axis: 0 | 1, start: number) =>
    Math.floor(
      (drawnTogether(wide, axis, crossing[axis]) + Math.ceil(joint / 2) - origin[axis] - start) / step[axis] +
        HAIR,
    );
  const [column, row] = [first(0, left), first(1, bottom)];
  return ({ k, i, j }) => {
    const [ownColumn, ownRow] = columnAndRow(pattern, k, i, j);
    return { columns: ownColumn - column, rows: ownRow - row };
  };
}
