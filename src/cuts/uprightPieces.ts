import type { Job } from '../job/Job.ts';
import type { Layout } from '../layout/Layout.ts';
import type { NamedPiece } from './groupCuts.ts';
import { looseOf } from './looseOf.ts';
import { ownPiece } from './ownPiece.ts';
import { uprightPiece } from './uprightPiece.ts';

/** The cut pieces of a layout in its order, each turned so that equal cuts lie alike. */
export function uprightPieces(job: Job, layout: Layout): NamedPiece[] {
  const turns = new Map(job.tiles.map((tile) => [tile.key, tile.turns]));
  const { edges, obstacles } = layout.frame;
  const all = [...edges, ...obstacles.flatMap((obstacle) => obstacle.edges)];
  return layout.pieces
    .filter(({ whole }) => !whole)
    .map((piece) => ({
      id: piece.id,
      tile: piece.tile,
      ...uprightPiece(ownPiece(piece, looseOf(piece, all)), turns.get(piece.tile) ?? 'none', job.print.step),
    }));
}
