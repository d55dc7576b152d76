import type { Cuts } from '../cuts/Cut.ts';
import { ownPiece } from '../cuts/ownPiece.ts';
import { type OwnPiece, type Turn, turnPiece } from '../cuts/TileBox.ts';
import { convexHull, ringArea } from '../geometry/index.ts';
import type { TileSpec } from '../job/Job.ts';
import type { Layout } from '../layout/Layout.ts';
import type { CutClass } from './CutClass.ts';
import { slidesOf } from './slidesOf.ts';
import { tileTurns } from './TileTurn.ts';

/** The cuts of one kind of tile over all surfaces, parted by what their pieces exactly are in the axes of the cut. */
export function cutClasses(tile: TileSpec, layouts: readonly Layout[], cutsOf: readonly Cuts[]): CutClass[] {
  const alike = layouts.flatMap((layout, i) => {
    const pieceOf = new Map(layout.pieces.map((piece) => [piece.id, piece]));
    const upright = (id: string, turn: Turn) =>
      turnPiece(ownPiece(pieceOf.get(id)!), ((360 - turn) % 360) as Turn);
    const named = (id: string) => (layouts.length > 1 ? `${layout.surface}:${id}` : id);
    return cutsOf[i]!.cuts.filter((cut) => cut.tile === tile.key).flatMap((cut) => {
      const parts = new Map<string, { own: OwnPiece; pieces: string[] }>();
      for (const [k, id] of cut.pieces.entries()) {
        const own = upright(id, cut.turns?.[k] ?? 0);
        const key = JSON.stringify(own.shape.outer);
        const part = parts.get(key) ?? { own, pieces: [] };
        part.pieces.push(named(id));
        parts.set(key, part);
      }
      return [...parts.values()].map((part) => ({ ...part, cut }));
    });
  });
  return alike.map(({ cut, own, pieces }, id): CutClass => {
    const ring = convexHull(own.shape.outer);
    const turns = tileTurns(tile.turns, own.box);
    return {
      id,
      cut,
      pieces,
      box: own.box,
      turns,
      ring,
      area: Math.abs(ringArea(ring)),
      slides: slidesOf(own, cut.edges),
    };
  });
}
