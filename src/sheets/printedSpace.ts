import type { Row, RowTerm } from '../cuts/Cut.ts';
import { sawNearest, type Ticks } from '../measure/index.ts';
import type { PacketSurface } from '../packet/Packet.ts';
import type { Zone } from '../zones/Zone.ts';
import { printedRow } from './printedRow.ts';

/**
 * The space that should be left at the end of a row, as its printed terms make it: gap, piece and joint of the row sums, to the nearest
 * step. A row that is laid by it closes as the row sums do, which rounding each end for itself would not: both may go up.
 *
 * @param step the saw step in ticks.
 */
export function printedSpace(
  { rows, cuts }: Pick<PacketSurface, 'rows' | 'cuts'>,
  found: Zone['found'][number],
  step: Ticks,
): Ticks {
  const row = rows.find(({ id }) => id === found.row);
  const own = new Set(cuts.flatMap(({ number, pieces }) => (found.cuts.includes(number) ? pieces : [])));
  const at = row ? placeOf(row, found, own) : undefined;
  if (!row || at === undefined) return sawNearest(found.expected, step);
  return sawNearest(
    around(printedRow(row, step).terms, at).reduce((sum, { saw }) => sum + saw, 0),
    step,
  );
}

/** Where the piece of a space stands in its row: of two alike, at the edge that the space is measured from. */
function placeOf(
  { terms, edges }: Row,
  { edge, expected }: Zone['found'][number],
  own: ReadonlySet<string>,
): number | undefined {
  const places = terms.flatMap(({ what, id }, i) => {
    const exact = around(terms, i).reduce((sum, one) => sum + one.exact, 0);
    return what === 'piece' && own.has(id) && exact === expected ? [i] : [];
  });
  return edge === edges[0] ? places[0] : places.at(-1);
}

/** A piece with what stands on both its sides. */
function around(terms: readonly RowTerm[], at: number): readonly RowTerm[] {
  return terms.slice(Math.max(0, at - 1), at + 2);
}
