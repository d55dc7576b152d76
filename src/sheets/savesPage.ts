import { pageSpace } from './drawingSpace.ts';

/** A line of the saw list as far as its height goes. */
export interface Row {
  readonly pieces: readonly string[];
  readonly marks: readonly unknown[];
  readonly next: readonly unknown[];
  readonly many: boolean;
}

/** Zones of the saw list: lines under a fence setting, and lines that are marked by hand. */
export type SawZones = readonly {
  readonly fences: readonly { readonly lines: readonly Row[] }[];
  readonly marked: readonly Row[];
}[];

/** Heights in mm: the rule over the list and how its pictures lie, a table's head with the space under it, a row and what lower rows save, a line of boxes, a line that tells of offcuts. */
const MM = { rule: 12.5, head: 7.5, row: 10.3, lower: 0.8, boxes: 8.4, mates: 4.2 } as const;
/** Boxes side by side, where sizes stand before them and where none do. */
const BESIDE = 4;
const ALONE = 6;

/** Roughly how high a row stands, in mm. */
export function rowHeight({ pieces, marks, next, many }: Row): number {
  const beside = marks.length + next.length > 0 && !many ? BESIDE : ALONE;
  return Math.max(MM.row, Math.ceil(pieces.length / beside) * MM.boxes + 1);
}

/**
 * Rows under one fence setting, in the parts that a page holds under the table's head: all together as a rule, since the setting stands
 * once beside them, and again at the head of each further part.
 */
export function partsOfPage<T extends Row>(
  rows: readonly T[],
  paper: 'letter' | 'a4',
): readonly (readonly T[])[] {
  const page = pageSpace(paper, 'portrait').heightMm - MM.rule - MM.head;
  const parts: T[][] = [];
  let full = Number.POSITIVE_INFINITY;
  for (const row of rows) {
    if (full + rowHeight(row) > page) [parts[parts.length], full] = [[], 0];
    parts.at(-1)!.push(row);
    full += rowHeight(row);
  }
  return parts;
}

/**
 * Whether rows that are a little lower spare the list a last page with a line or two on it.
 *
 * @param mates lines over the list that tell which pieces come from offcuts.
 */
export function savesPage(zones: SawZones, paper: 'letter' | 'a4', mates = 0): boolean {
  const tables = zones.flatMap(({ fences, marked }) => [fences.flatMap(({ lines }) => lines), marked]);
  const heights = tables.flatMap((rows) => (rows.length > 0 ? [MM.head, ...rows.map(rowHeight)] : []));
  const total = heights.reduce((sum, height) => sum + height, MM.rule + mates * MM.mates);
  const rows = tables.flat().length;
  const page = pageSpace(paper, 'portrait').heightMm;
  const over = total % page;
  return total > page && over < rows * MM.lower + MM.row / 2;
}
