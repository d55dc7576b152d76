import type { PacketPiece } from '../packet/Packet.ts';
import type { NameRequest } from './nameBlock.ts';
import { nameRequest } from './nameRequest.ts';
import { type NameGround, notInside } from './placeNames.ts';
import type { Scale } from './Scale.ts';
import { areTooSmall, inRows } from './tooSmallForNames.ts';

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

/** What is to be written on pieces. */
export interface PieceNames {
  readonly requests: readonly NameRequest[];
  /** Whether whole tiles are too small for their names. */
  readonly counted: boolean;
  /** Whether columns and rows are then numbered along the chalk lines. */
  readonly numbered: boolean;
}

/**
 * What is to be written on pieces: every name, with the number of its cut where wanted. Where whole tiles are too small
 * for their names, columns and rows are numbered along the chalk lines instead, if the tiles lie in any.
 */
export function pieceNames(
  pieces: readonly PacketPiece[],
  scale: Scale,
  numbers: boolean,
  ground: NameGround,
): PieceNames {
  const must = ground.must ?? new Set<string>();
  const all = pieces.map(({ id, shape, cut }) =>
    nameRequest(id, shape, scale, numbers && cut !== null ? cut : undefined),
  );
  const tiles = pieces.filter((piece) => piece.whole);
  const whole = new Set(tiles.map(({ id }) => id));
  const small = notInside(
    all.filter(({ name }) => whole.has(name)),
    ground,
  ).length;
  const counted = areTooSmall(tiles, small);
  const numbered = counted && inRows(tiles);
  const requests = numbered
    ? all.flatMap((request) =>
        whole.has(request.name) && !must.has(request.name) ? countRequest(request) : [request],
      )
    : all;
  return { requests, counted, numbered };
}
