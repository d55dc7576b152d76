import type { Point } from '../../geometry/index.ts';
import type { Face } from '../frame/Face.ts';
import type { Piece } from '../Layout.ts';
import type { LaidPiece } from '../pieces/LaidPiece.ts';
import { keyOf, type Lattice } from '../pieces/Lattice.ts';
import { wallCurves } from '../pieces/unbend.ts';
import { pieceName, type Steps } from './pieceName.ts';
import { stepsFrom } from './stepsFrom.ts';

/** A laid piece with its name and the steps from the crossing that it was made from. */
export interface NamedPiece {
  readonly id: string;
  readonly at: Steps;
  readonly laid: LaidPiece;
}

/** Laid pieces with their names from the chalk crossing, in order of rows from below, then columns. */
export function namePieces(laid: readonly LaidPiece[], lattice: Lattice, crossing: Point): NamedPiece[] {
  const steps = stepsFrom(crossing, lattice);
  const seen = new Map<number, number>();
  const placed = laid.map((piece) => ({ laid: piece, at: steps(piece.place) }));
  placed.sort(
    (a, b) =>
      a.at.rows - b.at.rows || a.at.columns - b.at.columns || lower(a.laid.shape.outer, b.laid.shape.outer),
  );
  return placed.map(({ laid: piece, at }): NamedPiece => {
    const key = keyOf(piece.place);
    const before = seen.get(key) ?? 0;
    seen.set(key, before + 1);
    return { id: `${pieceName(at)}${SUFFIXES[before] ?? before + 1}`, at, laid: piece };
  });
}

/** A named piece as it is handed on. */
export function pieceOf({ id, at, laid }: NamedPiece, { pattern }: Lattice, faces: readonly Face[]): Piece {
  const { tile, quarter, slantDeg } = pattern.tiles[laid.place.k]!;
  const curves = laid.whole ? [] : wallCurves(laid.faces.map((index) => faces[index]!));
  return {
    id,
    tile,
    whole: laid.whole,
    fullTile: laid.ring,
    quarter,
    ...(slantDeg && { slantDeg }),
    shape: laid.shape,
    column: at.columns,
    row: at.rows,
    edges: laid.faces.map((index) => faces[index]!.id),
    share: Math.min(...laid.shares),
    seen: laid.seen,
    circles: circlesOf(laid.faces.map((index) => faces[index]!)),
    ...(curves.length > 0 && { curves }),
  };
}

/** Two pieces of one tile, such as both legs of a U, differ by a letter. */
const SUFFIXES = ['', 'b', 'c', 'd', 'e'];

function lower(p: readonly Point[], q: readonly Point[]): number {
  return p[0]![1] - q[0]![1] || p[0]![0] - q[0]![0];
}

function circlesOf(faces: readonly Face[]): Piece['circles'] {
  return faces.flatMap(({ circle, name, gap }) =>
    circle ? [{ name, centre: circle.centre, radius: circle.radius + gap }] : [],
  );
}
