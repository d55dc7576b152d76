import type { Point } from '../../geometry/index.ts';
import type { Face } from '../frame/Face.ts';
import type { Piece } from '../Layout.ts';
import type { LaidPiece } from '../pieces/LaidPiece.ts';
import { keyOf, type Lattice } from '../pieces/Lattice.ts';
import { pieceName } from './pieceName.ts';
import { stepsFrom } from './stepsFrom.ts';

/** Laid pieces as they are handed on: named from the chalk crossing, in order of rows from below, then columns. */
export function namePieces(
  laid: readonly LaidPiece[],
  lattice: Lattice,
  crossing: Point,
  faces: readonly Face[],
): Piece[] {
  const steps = stepsFrom(crossing, lattice);
  const seen = new Map<number, number>();
  const placed = laid.map((piece) => ({ piece, at: steps(piece.place) }));
  placed.sort(
    (a, b) =>
      a.at.rows - b.at.rows || a.at.columns - b.at.columns || lower(a.piece.shape.outer, b.piece.shape.outer),
  );
  return placed.map(({ piece, at }): Piece => {
    const key = keyOf(piece.place);
    const before = seen.get(key) ?? 0;
    seen.set(key, before + 1);
    const { tile, quarter } = lattice.pattern.tiles[piece.place.k]!;
    return {
      id: `${pieceName(at)}${SUFFIXES[before] ?? before + 1}`,
      tile,
      whole: piece.whole,
      fullTile: piece.ring,
      quarter,
      shape: piece.shape,
      column: at.columns,
      row: at.rows,
      edges: piece.faces.map((index) => faces[index]!.id),
      share: Math.min(...piece.shares),
      seen: piece.seen,
      circles: circlesOf(piece.faces.map((index) => faces[index]!)),
    };
  });
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
