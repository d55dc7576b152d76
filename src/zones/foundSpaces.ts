import type { Cuts, Row, RowTerm } from '../cuts/Cut.ts';
import type { Layout } from '../layout/Layout.ts';
import type { Zone } from './Zone.ts';

/**
 * For each end of a row at which a piece of the zone is sawn: the space that should be left between the last whole tile and the
 * wall, joint, piece and gap, and the number of the cut to which a difference is added.
 */
export function foundSpaces(
  layout: Layout,
  { cuts, rows }: Cuts,
  inZone: ReadonlySet<string>,
): Zone['found'] {
  const numberOf = new Map(cuts.flatMap(({ pieces, number }) => pieces.map((id) => [id, number] as const)));
  const inside = endTerms(layout);
  return rows.flatMap((row) => {
    const full = layout.pattern.module[row.axis === 'along' ? 0 : 1] - layout.pattern.joint;
    const ends: [RowTerm[], string][] = [
      inside(row.terms, row.edges[0]),
      inside([...row.terms].reverse(), row.edges[1]),
    ];
    return ends.flatMap(([terms, edge]) => spaceAt(row, terms, edge, full, inZone, numberOf));
  });
}

/** The first four terms from an end: gap, piece, joint and the piece that is measured from; where a border lies there, those from its inner edge on. */
function endTerms(layout: Layout) {
  const walls = new Map(
    layout.pieces.flatMap(({ id, border }) => (border ? [[id, border.wall] as const] : [])),
  );
  return (terms: readonly RowTerm[], edge: string): [RowTerm[], string] => {
    const first = terms.findIndex(({ what, id }) => what === 'piece' && !walls.has(id));
    const wall = walls.get(terms[first - 2]?.id ?? '');
    return wall === undefined
      ? [terms.slice(0, 4), edge]
      : [terms.slice(first - 1, first + 3), `border:${wall}`];
  };
}

/** Two ticks of rounding do not make a tile a sawn one. */
const isWhole = ({ exact }: RowTerm, full: number): boolean => exact > full - 2;

function spaceAt(
  row: Row,
  [gap, piece, joint, last]: readonly RowTerm[],
  edge: string,
  full: number,
  inZone: ReadonlySet<string>,
  numberOf: ReadonlyMap<string, number>,
): Zone['found'] {
  const number = numberOf.get(piece?.id ?? '');
  if (
    !piece ||
    joint?.what !== 'joint' ||
    number === undefined ||
    !inZone.has(piece.id) ||
    isWhole(piece, full)
  )
    return [];
  // A row that has no whole tile there has nothing that its space could be measured from.
  if (!last || !isWhole(last, full)) return [];
  return [{ edge, row: row.id, expected: gap!.exact + piece.exact + joint.exact, cuts: [number] }];
}
