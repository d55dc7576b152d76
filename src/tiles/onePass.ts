import { type Point, side } from '../geometry/index.ts';
import type { Ticks } from '../measure/index.ts';

/** A piece where it lies in its tile: straight edges, the piece to their left. */
export interface LyingPiece {
  readonly edges: readonly { readonly from: Point; readonly to: Point; readonly factory: boolean }[];
}

/** Two pieces that one straight pass of the saw frees, and the sawn edge of the first of them. */
export interface OnePass {
  readonly pieces: readonly [number, number];
  readonly from: Point;
  readonly to: Point;
}

/**
 * Pairs of pieces in a tile with nothing but the blade between them: sawn edges that face each other, a kerf apart and less
 * than a saw step more, with every other piece on one side. The fence is set once for both.
 *
 * @param kerf width that the blade takes, in ticks; `step` what saw sizes are rounded to.
 */
export function onePass(pieces: readonly LyingPiece[], kerf: Ticks, step: Ticks): readonly OnePass[] {
  return pieces.flatMap((one, i) =>
    pieces.slice(i + 1).flatMap((other, k): OnePass[] => {
      const rest = pieces.filter((piece) => piece !== one && piece !== other);
      const edge = one.edges.find(
        (line) =>
          !line.factory &&
          faces(line, other, kerf, step) &&
          rest.every((piece) => isClear(line, piece, kerf)),
      );
      return edge ? [{ pieces: [i, i + 1 + k], from: edge.from, to: edge.to }] : [];
    }),
  );
}

type Edge = LyingPiece['edges'][number];

/** How far a point lies outside an edge, which is to its right. */
function outside({ from, to }: Edge, point: Point): number {
  return -side(from, to, point) / Math.hypot(to[0] - from[0], to[1] - from[1]);
}

/** Two ticks for what rounding moved. */
const ROUNDED = 2;

/** Whether a piece lies outside an edge with one of its sawn edges along it, the blade's width away. */
function faces(edge: Edge, piece: LyingPiece, kerf: Ticks, step: Ticks): boolean {
  const beyond = piece.edges.every(({ from }) => outside(edge, from) >= kerf - ROUNDED);
  return (
    beyond &&
    piece.edges.some(
      (one) =>
        !one.factory &&
        [one.from, one.to].every((end) => outside(edge, end) < kerf + step) &&
        overlap(edge, one),
    )
  );
}

/** Whether an edge runs beside more than half of the longer of two. */
function overlap(one: Edge, other: Edge): boolean {
  const length = Math.hypot(one.to[0] - one.from[0], one.to[1] - one.from[1]);
  const along = ([x, y]: Point) =>
    ((x - one.from[0]) * (one.to[0] - one.from[0]) + (y - one.from[1]) * (one.to[1] - one.from[1])) / length;
  const [a, b] = [along(other.from), along(other.to)];
  const common = Math.min(length, Math.max(a, b)) - Math.max(0, Math.min(a, b));
  return common > Math.max(length, Math.abs(b - a)) / 2;
}

/** Whether the pass along an edge runs past a piece. */
function isClear(edge: Edge, piece: LyingPiece, kerf: Ticks): boolean {
  const far = piece.edges.map(({ from }) => outside(edge, from));
  return far.every((one) => one <= ROUNDED) || far.every((one) => one >= kerf - ROUNDED);
}
