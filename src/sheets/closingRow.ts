import type { RowTerm } from '../cuts/Cut.ts';
import { printLength } from '../measure/index.ts';
import type { PrintedRow } from './printedRow.ts';
import type { SheetContext } from './SheetContext.ts';

/**
 * A row as it is printed: `7 5/8 · 9 × 11 13/16 · 7 5/8 · joints 10 × 3/16 · gaps 5/16 + 1/4`.
 *
 * Its terms are those of a printed row, so that they add up to the room as printed.
 */
export function closingRow(
  { say, units }: Pick<SheetContext, 'say' | 'units'>,
  row: Pick<PrintedRow, 'terms'>,
): string {
  const text = (ticks: number) => printLength(ticks, units, { round: 'down', unit: false });
  const pieces = runs(row.terms.filter((term) => term.what === 'piece')).map(({ count, saw }) =>
    count > 1 ? `${count} × ${text(saw)}` : text(saw),
  );
  const joints = runs(row.terms.filter((term) => term.what === 'joint')).map(
    ({ count, saw }) => `${count} × ${text(saw)}`,
  );
  const gaps = row.terms.filter((term) => term.what === 'gap').map((term) => text(term.saw));
  return say('row.closing', {
    pieces: pieces.join(' · '),
    joints: joints.join(' · '),
    gaps: gaps.join(' + '),
  });
}

/** Neighbours of the same size as one entry with a count. */
function runs(terms: readonly RowTerm[]): { count: number; saw: number }[] {
  const found: { count: number; saw: number }[] = [];
  for (const { saw } of terms) {
    const last = found.at(-1);
    if (last && last.saw === saw) last.count++;
    else found.push({ count: 1, saw });
  }
  return found;
}
