import type { Cuts, Row, RowTerm } from '../cuts/Cut.ts';
import { rangeOn } from '../geometry/index.ts';
import type { Layout, Piece } from '../layout/Layout.ts';
import { sawDown, type Ticks } from '../measure/index.ts';
import type { Zone } from './Zone.ts';

type Found = Zone['found'][number];

/** A space with the piece that lies in it and the direction of its row. */
type FoundAt = Found & { readonly piece: string; readonly along: 0 | 1 };

/**
 * For each end of a row at which a piece of the zone is sawn: the space that should be left between the last whole tile and the
 * wall, joint, piece and gap, and the numbers of the cuts to which a difference is added. These are its own, and of pieces that no row
 * ends with those that begin on the same joint and are sawn to the same size for the same edge.
 *
 * @param step the saw step in ticks.
 */
export function foundSpaces(
  layout: Layout,
  { cuts, rows }: Cuts,
  inZone: ReadonlySet<string>,
  step: Ticks,
): Zone['found'] {
  const numberOf = new Map(cuts.flatMap(({ pieces, number }) => pieces.map((id) => [id, number] as const)));
  const inside = endTerms(layout);
  const own = rows.flatMap((row) => {
    const along = row.axis === 'along' ? 0 : 1;
    const full = layout.pattern.module[row.axis === 'along' ? 0 : 1] - layout.pattern.joint;
    const ends: [RowTerm[], string][] = [
      inside(row.terms, row.edges[0]),
      inside([...row.terms].reverse(), row.edges[1]),
    ];
    return ends
      .flatMap(([terms, edge]) => spaceAt(row, terms, edge, full, inZone, numberOf))
      .map((found): FoundAt => ({ ...found, along }));
  });
  const pieces = layout.pieces.filter(({ id, border }) => inZone.has(id) && !border);
  return withAlike(own, pieces, step, numberOf);
}

/** Spaces with the numbers of cuts that no row of their own tells, but one beside them. */
function withAlike(
  own: readonly FoundAt[],
  pieces: readonly Piece[],
  step: Ticks,
  numberOf: ReadonlyMap<string, number>,
): Zone['found'] {
  const byId = new Map(pieces.map((piece) => [piece.id, piece]));
  const toldAt = new Set(own.flatMap(({ edge, cuts }) => cuts.map((cut) => `${edge} ${cut}`)));
  const open = pieces.flatMap((piece) => {
    const number = numberOf.get(piece.id);
    return number === undefined ? [] : piece.edges.map((edge) => ({ piece, edge, number }));
  });
  const untold = open.filter(({ edge, number }) => !toldAt.has(`${edge} ${number}`));
  return own.map(({ piece, along, ...found }) => {
    const like = byId.get(piece)!;
    const more = untold.filter((one) => one.edge === found.edge && areAlike(one.piece, like, along, step));
    return { ...found, cuts: [...new Set([...found.cuts, ...more.map(({ number }) => number)])] };
  });
}

/** Whether two pieces have the joint that one measures from on one line, and are sawn to one size from there. */
function areAlike(one: Piece, other: Piece, along: 0 | 1, step: Ticks): boolean {
  const [a, b] = [one, other].map(({ shape, fullTile }) => ({
    own: rangeOn(shape.outer, along),
    full: rangeOn(fullTile, along),
  }));
  const isOn = (end: 0 | 1) =>
    Math.abs(a!.full[end] - b!.full[end]) <= ROUNDING && Math.abs(a!.own[end] - a!.full[end]) <= ROUNDING;
  const size = ([low, high]: readonly [number, number]) => sawDown(high - low, step);
  return (isOn(0) || isOn(1)) && size(a!.own) === size(b!.own);
}

/** Rounding moves a corner of a piece by so few ticks. */
const ROUNDING: Ticks = 2;

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
const isWhole = ({ exact }: RowTerm, full: number): boolean => exact > full - ROUNDING;

function spaceAt(
  row: Row,
  [gap, piece, joint, last]: readonly RowTerm[],
  edge: string,
  full: number,
  inZone: ReadonlySet<string>,
  numberOf: ReadonlyMap<string, number>,
): (Found & { readonly piece: string })[] {
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
  const expected = gap!.exact + piece.exact + joint.exact;
  return [{ edge, row: row.id, expected, cuts: [number], piece: piece.id }];
}
