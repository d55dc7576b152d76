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

/** The first three terms from an end; where a border lies there, those from its inner edge on. */
function endTerms(layout: Layout) {
  const walls = new Map(
    layout.pieces.flatMap(({ id, border }) => (border ? [[id, border.wall] as const] : [])),
  );
  return (terms: readonly RowTerm[], edge: string): [RowTerm[], string] => {
    const first = terms.findIndex(({ what, id }) => what === 'piece' && !walls.has(id));
    const wall = walls.get(terms[first - 2]?.id ?? '');
    return wall === undefined
      ? [terms.slice(0, 3), edge]
      : [terms.slice(first - 1, first + 2), `border:${wall}`];
  };
}

function spaceAt(
  row: Row,
  [gap, piece, joint]: readonly RowTerm[],
  edge: string,
  full: number,
  inZone: ReadonlySet<string>,
  numberOf: ReadonlyMap<string, number>,
): Zone['found'] {
  const number = numberOf.get(piece?.id ?? '');
  // Two ticks of rounding do not make a tile a sawn one.
  if (
    !piece ||
    joint?.what !== 'joint' ||
    number === undefined ||
    !inZone.has(piece.id) ||
    piece.exact > full - 2
  )
    return [];
  return [{ edge, row: row.id, expected: gap!.exact + piece.exact + joint.exact, cuts: [number] }];
}
