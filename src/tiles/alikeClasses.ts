import { ownPiece } from '../cuts/ownPiece.ts';
import type { OwnPiece } from '../cuts/TileBox.ts';
import { convexHull, fromLowest, type Point, ringArea } from '../geometry/index.ts';
import type { TileSpec } from '../job/Job.ts';
import type { Layout } from '../layout/Layout.ts';
import type { PieceClass } from './CutClass.ts';
import { slidesOf } from './slidesOf.ts';
import { tileTurns, turnInTile } from './TileTurn.ts';

/**
 * The cut pieces of one kind of tile in a layout, those that are alike to the tick together however they are turned: what tiles are
 * counted by where nobody is told how a piece is sawn.
 */
export function alikeClasses(tile: TileSpec, { pieces }: Pick<Layout, 'pieces'>): PieceClass[] {
  const found = new Map<string, { own: OwnPiece; pieces: string[] }>();
  for (const piece of pieces) {
    if (piece.whole || piece.tile !== tile.key) continue;
    const own = ownPiece(piece);
    const key = keyOf(own, tile);
    const alike = found.get(key) ?? { own, pieces: [] };
    alike.pieces.push(piece.id);
    found.set(key, alike);
  }
  return [...found.values()].map(({ own, pieces }, id): PieceClass => {
    const ring = convexHull(own.shape.outer);
    return {
      id,
      pieces,
      box: own.box,
      turns: tileTurns(tile.turns, own.box),
      ring,
      area: Math.abs(ringArea(ring)),
      slides: slidesOf(own),
    };
  });
}

/** The same for a piece however it is turned in its tile. */
function keyOf({ shape, box }: OwnPiece, { turns }: TileSpec): string {
  const rings = tileTurns(turns, box).map((turn) =>
    shape.outer.map((point): Point => {
      const [x, y] = turnInTile(point, turn, box);
      return [Math.round(x), Math.round(y)];
    }),
  );
  return rings.map((ring) => fromLowest(ring).join(' ')).sort()[0]!;
}
