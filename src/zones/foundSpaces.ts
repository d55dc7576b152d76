import type { Cuts, Row, RowTerm } from '../cuts/Cut.ts';
import type { Layout } from '../layout/Layout.ts';
import type { Zone } from './Zone.ts';

/**
 * For each end of a row at which a piece of the zone is sawn: the space that should be left between the last whole edge and the
 * wall, joint, piece and gap, and the number of the cut to which a difference is added.
 */
export function foundSpaces(
  layout: Layout,
  { cuts, rows }: Cuts,
  inZone: ReadonlySet<string>,
): Zone['found'] {
  const numberOf = new Map(cuts.flatMap(({ pieces, number }) => pieces.map((id) => [id, number] as const)));
  return rows.flatMap((row) => {
    const full = layout.pattern.module[row.axis === 'along' ? 0 : 1] - layout.pattern.joint;
    const ends: [RowTerm[], string][] = [
      [row.terms.slice(0, 3), row.edges[0]],
      [row.terms.slice(-3).reverse(), row.edges[1]],
    ];
    return ends.flatMap(([terms, edge]) => spaceAt(row, terms, edge, full, inZone, numberOf));
  });
}

function spaceAt(
  row: Row,
  [gap, piece, joint]: RowTerm[],
  edge: string,
  full: number,
  inZone: ReadonlySet<string>,
  numberOf: ReadonlyMap<string, number>,
): Zone['found'] {
  const number = numberOf.get(piece!.id);
  // Two ticks of rounding do not make a tile a sawn one.
  if (joint?.what !== 'joint' || number === undefined || !inZone.has(piece!.id) || piece!.exact > full - 2)
    return [];
  return [{ edge, row: row.id, expected: gap!.exact + piece!.exact + joint.exact, cuts: [number] }];
}
