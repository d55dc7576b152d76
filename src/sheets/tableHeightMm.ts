import { textWidth } from '../drawing/index.ts';

/** A line of a table of two columns: what is asked, and in bold what is written there. */
export interface TwoCells {
  readonly what: string;
  readonly value: string;
}

/** How such a table is set: widths of what each cell holds and heights of a row and of a further line in it, in mm; size in points. */
export interface TwoColumns {
  readonly whatMm: number;
  readonly valueMm: number;
  readonly points: number;
  readonly rowMm: number;
  readonly lineMm: number;
}

/**
 * Height of a table whose long words go on to further lines, in mm.
 *
 * @example tableHeightMm([{ what: 'Lot', value: '0417' }], { whatMm: 40, valueMm: 90, points: 11, rowMm: 7, lineMm: 5 }) //=> 7
 */
export function tableHeightMm(rows: readonly TwoCells[], columns: TwoColumns): number {
  const { whatMm, valueMm, points, rowMm, lineMm } = columns;
  return rows.reduce((sum, { what, value }) => {
    const asked = Math.ceil(textWidth(what, points, 400) / whatMm);
    const written = Math.ceil(textWidth(value, points, 700) / valueMm);
    return sum + Math.max(rowMm, Math.max(asked, written) * lineMm);
  }, 0);
}
