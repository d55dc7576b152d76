import type { Ticks } from '../measure/index.ts';

/** Rows of heights of a floor on a square grid, in ticks; null where nothing was read. */
export type HeightRows = readonly (readonly (Ticks | null)[])[];

/** How far a floor departs from a straight line at one reading, in ticks: a hollow lies under the line, a hump over it. */
export interface Departure {
  readonly kind: 'hollow' | 'hump';
  readonly depth: Ticks;
  /** Row and reading in it, from 1. */
  readonly row: number;
  readonly number: number;
}

/** Along a row, across the rows, and both diagonals. */
const directions = [
  [0, 1],
  [1, 0],
  [1, 1],
  [1, -1],
] as const;

const at = (heights: HeightRows, row: number, number: number): Ticks | null => heights[row]?.[number] ?? null;

/** The straight lines through one reading between two others that lie no more than a straightedge apart, its height over each. */
function overLines(
  heights: HeightRows,
  row: number,
  number: number,
  every: Ticks,
  straightedge: Ticks,
): number[] {
  const here = at(heights, row, number);
  if (here === null) return [];
  return directions.flatMap(([down, right]) => {
    const most = Math.floor(straightedge / (every * Math.hypot(down, right)) + 1e-9);
    const found: number[] = [];
    for (let back = 1; back < most; back++) {
      const before = at(heights, row - back * down, number - back * right);
      if (before === null) continue;
      for (let on = 1; on + back <= most; on++) {
        const after = at(heights, row + on * down, number + on * right);
        if (after !== null) found.push(here - (before * on + after * back) / (back + on));
      }
    }
    return found;
  });
}

/**
 * For each reading the deepest hollow and the highest hump that a straightedge of this length shows there: how far the floor
 * lies under or over the straight line between two readings, along rows, columns and diagonals. Undefined where no
 * straightedge reaches over the reading from one side to the other. Geometry; ticks.
 *
 * @example departures([[0, -600, 0]], 304800, 975360)[0] //=> { kind: 'hollow', depth: 600, row: 1, number: 2 }
 * @example departures([[0, 500, 0]], 304800, 975360)[0] //=> { kind: 'hump', depth: 500, row: 1, number: 2 }
 * @example departures([[0, 500, 0]], 304800, 609599) //=> []
 */
export function departures(heights: HeightRows, every: Ticks, straightedge: Ticks): readonly Departure[] {
  return heights.flatMap((numbers, row) =>
    numbers.flatMap((_, number): Departure[] => {
      const over = overLines(heights, row, number, every, straightedge);
      if (over.length === 0) return [];
      const [hollow, hump] = [Math.round(-Math.min(...over)) + 0, Math.round(Math.max(...over)) + 0];
      const place = { row: row + 1, number: number + 1 };
      return [
        ...(hollow >= hump ? [{ kind: 'hollow' as const, depth: hollow, ...place }] : []),
        ...(hump > hollow ? [{ kind: 'hump' as const, depth: hump, ...place }] : []),
        // A reading may lie under one line and over another: what has to be filled there counts as well.
        ...(hump > hollow && hollow > 0 ? [{ kind: 'hollow' as const, depth: hollow, ...place }] : []),
      ];
    }),
  );
}

/**
 * Mean over a grid of what is told for each reading, in ticks: over its squares, each with the mean of its four corners;
 * over its readings where there is no whole square. Geometry.
 *
 * @example gridMean([[0, 0, 0], [0, 4, 0], [0, 0, 0]]) //=> 1
 * @example gridMean([[1, null, 3]]) //=> 2
 */
export function gridMean(values: HeightRows): number {
  const squares = values.flatMap((row, i) =>
    row.flatMap((_, j) => {
      const corners = [
        at(values, i, j),
        at(values, i, j + 1),
        at(values, i + 1, j),
        at(values, i + 1, j + 1),
      ];
      return corners.every((one) => one !== null) ? [corners.reduce((sum, one) => sum + one, 0) / 4] : [];
    }),
  );
  const all = squares.length > 0 ? squares : values.flat().filter((one) => one !== null);
  return all.length === 0 ? 0 : all.reduce((sum, one) => sum + one, 0) / all.length;
}
