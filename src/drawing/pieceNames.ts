import type { PacketPiece } from '../packet/Packet.ts';
import type { NameRequest } from './nameBlock.ts';
import { nameRequest } from './nameRequest.ts';
import { type NameGround, notInside } from './placeNames.ts';
import type { Scale } from './Scale.ts';

/** When more than this share of the whole tiles can't hold its name, the names of whole tiles are left to counting. */
const mostSmall = 0.1;

/** The column's number for a piece of the course over the crossing, the row's for one right of it. */
function countOf(id: string): string | undefined {
  const [, quarter, column, row] = /^([KLMN])(\d+)-(\d+)$/.exec(id) ?? [];
  if (row === '1' && (quarter === 'K' || quarter === 'L')) return column;
  return column === '1' && (quarter === 'K' || quarter === 'N') ? row : undefined;
}

/** A whole tile's request in a plan where tiles are counted: its number if it lies along a chalk line. */
function countRequest(request: NameRequest): readonly NameRequest[] {
  const name = countOf(request.name);
  return name === undefined ? [] : [{ ...request, name }];
}

/**
 * What is to be written on pieces: every name, with the number of its cut where wanted. Where whole tiles are too small
 * for their names, none of them is named, and columns and rows are numbered along the chalk lines instead.
 */
export function pieceNames(
  pieces: readonly PacketPiece[],
  scale: Scale,
  numbers: boolean,
  ground: NameGround,
): { readonly requests: readonly NameRequest[]; readonly counted: boolean } {
  const all = pieces.map(({ id, shape, cut }) =>
    nameRequest(id, shape, scale, numbers && cut !== null ? cut : undefined),
  );
  const whole = new Set(pieces.filter((piece) => piece.whole).map(({ id }) => id));
  const small = notInside(
    all.filter(({ name }) => whole.has(name)),
    ground,
  ).length;
  const counted = small > mostSmall * whole.size;
  const requests = counted
    ? all.flatMap((request) => (whole.has(request.name) ? countRequest(request) : [request]))
    : all;
  return { requests, counted };
}
