import type { Pattern } from './Pattern.ts';

/** Rounding in a column's slope must not put a tile that stands exactly on a whole column one lower. */
const HAIR = 1e-9;

/**
 * Column and row of tile `k` of repeat (i, j), counted in tiles from the first tile of repeat (0, 0).
 *
 * @example columnAndRow({ tiles: [{ column: [1, 0, 0], row: [0, 2, 0] }, { column: [1, 0, 0], row: [0, 2, 1] }] }, 1, 3, 4) //=> [3, 9]
 */
export function columnAndRow(
  { tiles }: { readonly tiles: readonly Pick<Pattern['tiles'][number], 'column' | 'row'>[] },
  k: number,
  i: number,
  j: number,
): [column: number, row: number] {
  const { column, row } = tiles[k]!;
  const at = ([ci, cj, c0]: readonly [number, number, number]) => Math.floor(ci * i + cj * j + c0 + HAIR);
  return [at(column), at(row)];
}
