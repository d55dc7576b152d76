/** Which way a piece lies from the crossing of the chalk lines, counted in tiles: −1 is next to it on the other side. */
export interface Steps {
  readonly columns: number;
  readonly rows: number;
}

/**
 * The name of a piece: the quarter of the floor it lies in, K right and up, then L, M, N counter-clockwise,
 * and its column and row counted from the crossing, the first being 1.
 *
 * @example pieceName({ columns: 2, rows: 1 }) //=> 'K3-2'
 * @example pieceName({ columns: -1, rows: 0 }) //=> 'L1-1'
 * @example pieceName({ columns: -2, rows: -3 }) //=> 'M2-3'
 * @example pieceName({ columns: 0, rows: -1 }) //=> 'N1-1'
 */
export function pieceName({ columns, rows }: Steps): string {
  const quarter = rows >= 0 ? (columns >= 0 ? 'K' : 'L') : columns >= 0 ? 'N' : 'M';
  const count = (steps: number) => (steps >= 0 ? steps + 1 : -steps);
  return `${quarter}${count(columns)}-${count(rows)}`;
}
