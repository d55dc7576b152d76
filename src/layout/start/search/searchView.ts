import { bounds, type Point } from '../../../geometry/index.ts';
import type { Ground } from '../../frame/Ground.ts';
import type { Repeat } from './leastRepeat.ts';
import type { WallDirection } from './WallReading.ts';

/** A room as the search sees it: the same one from wherever it is measured and whichever way it is mirrored. */
export interface SearchView {
  readonly directions: readonly WallDirection[];
  /** The repeats of the pattern as they lie there. */
  readonly a: Point;
  readonly b: Point;
  /** A coordinate of an origin in the frame as it is seen, and back. */
  readonly into: (value: number, axis: 0 | 1) => number;
  readonly back: (value: number, axis: 0 | 1) => number;
  /** Which way along x of the frame counts upwards there. */
  readonly way: 1 | -1;
}

/**
 * Turns the search's back on where the frame begins: places are told from the middle of the walls to the middle of a tile, along x
 * towards where more of the walls in sight lie far out. Of starts that are as good the search comes to the same ones then, rounding apart.
 */
export function searchView(
  { edges, faces, focalWeight }: Pick<Ground, 'edges' | 'faces' | 'focalWeight'>,
  { a, b, tiles }: Repeat,
  directions: readonly WallDirection[],
): SearchView {
  const walls = edges.map(({ from, to, face }) => {
    const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
    const { seen } = faces[face]!;
    const weight = seen === 'hidden' ? 0 : seen === 'focal' ? focalWeight : 1;
    return { at: [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2] as const, length, inSight: weight * length };
  });
  const all = walls.reduce((sum, { length }) => sum + length, 0);
  const middle = ([0, 1] as const).map(
    (axis) => walls.reduce((sum, { at, length }) => sum + at[axis] * length, 0) / all,
  );
  const tail = walls.reduce((sum, { at, inSight }) => sum + (at[0] - middle[0]!) ** 3 * inSight, 0);
  const way = tail < 0 ? -1 : 1;
  const { minX, minY, maxX, maxY } = bounds(tiles[0]!.ring);
  const zero: Point = [
    Math.round(middle[0]! - (minX + maxX) / 2) + 0,
    Math.round(middle[1]! - (minY + maxY) / 2) + 0,
  ];
  return {
    directions: directions.map((one) => seen(one, zero, way)),
    ...lattice(a, b, way),
    into: (value, axis) => (axis === 0 ? way : 1) * (value - zero[axis]),
    back: (value, axis) => (axis === 0 ? way : 1) * value + zero[axis],
    way,
  };
}

/** A direction as it is seen, its normal upwards or else to the right. */
function seen(direction: WallDirection, zero: Point, way: 1 | -1): WallDirection {
  const { normal, ahead, behind, readings } = direction;
  const [x, y] = [way * normal[0], normal[1]];
  const up = y > 1e-9 || (y > -1e-9 && x > 0) ? 1 : -1;
  const off = normal[0] * zero[0] + normal[1] * zero[1];
  return {
    ...direction,
    normal: [up * x + 0, up * y + 0],
    ahead: up > 0 ? ahead : behind,
    behind: up > 0 ? behind : ahead,
    readings: readings.map((one) => ({
      ...one,
      side: up > 0 ? one.side : one.side > 0 ? -1 : 1,
      at: one.at - one.side * off,
    })),
  };
}

/** Repeats of the pattern seen in a mirror, the second leaning to the right by less than one of the first. */
function lattice(a: Point, b: Point, way: 1 | -1): { a: Point; b: Point } {
  const first: Point = [a[0], way * a[1]];
  const second: Point = [way * b[0], b[1]];
  const back = Math.floor((second[0] * first[0] + second[1] * first[1]) / (first[0] ** 2 + first[1] ** 2));
  return { a: first, b: [second[0] - back * first[0], second[1] - back * first[1]] };
}
