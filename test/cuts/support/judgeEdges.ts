import type { Cuts } from '../../../src/cuts/Cut.ts';
import type { Point } from '../../../src/geometry/index.ts';
import type { Layout } from '../../../src/layout/Layout.ts';
import { sizeOf, spun, toTile } from '../../tiles/support/judgePlan.ts';

/** What is not longer than 1/64 in is the tip of a corner; edges of cuts under one number end within a saw step of each other. */
const TIP = 127;
const STEP = 600;

/** Edges of pieces on a side of their tile that their cut does not tell to be factory edges. */
export function judgeEdges({ pieces }: Pick<Layout, 'pieces'>, { cuts }: Pick<Cuts, 'cuts'>): string[] {
  const pieceOf = new Map(pieces.map((piece) => [piece.id, piece]));
  return cuts.flatMap((cut) =>
    cut.pieces.flatMap((id, k) => {
      const piece = pieceOf.get(id)!;
      const [length, width] = sizeOf(piece);
      const back = (4 - cut.turns![k]! / 90) % 4;
      const box: Point = back % 2 === 0 ? [length, width] : [width, length];
      const ring = piece.shape.outer.map((point): Point => {
        const [x, y] = toTile(point, piece);
        const [ux, uy] = spun([x - length / 2, y - width / 2], back);
        return [ux + box[0] / 2, uy + box[1] / 2];
      });
      return ring.flatMap((from, i) => {
        const to = ring[(i + 1) % ring.length]!;
        const sides = ([0, 1] as const).flatMap((axis) =>
          [0, box[axis]].map((at) => ({ axis, at, lies: (end: Point) => Math.abs(end[axis] - at) <= 2 })),
        );
        const on = sides.filter(({ lies }) => lies(from) && lies(to));
        if (on.length !== 1 || Math.hypot(to[0] - from[0], to[1] - from[1]) <= TIP) return [];
        const other = on[0]!.axis === 0 ? 1 : 0;
        const middle = (from[other] + to[other]) / 2;
        const told = cut.edges.some(
          (edge) =>
            edge.factory &&
            on[0]!.lies(edge.from) &&
            on[0]!.lies(edge.to) &&
            Math.min(edge.from[other], edge.to[other]) - STEP <= middle &&
            middle <= Math.max(edge.from[other], edge.to[other]) + STEP,
        );
        return told ? [] : [`a joint edge of ${id} is told as sawn in cut ${cut.number}`];
      });
    }),
  );
}
