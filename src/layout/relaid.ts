import type { Point } from '../geometry/index.ts';
import type { Ground } from './frame/Ground.ts';
import type { Layout } from './Layout.ts';
import { namePieces, pieceOf } from './names/namePieces.ts';
import { laidPieces } from './pieces/laidPieces.ts';
import type { Laid } from './pieces/layTiles.ts';

/**
 * A layout with its pieces taken from tiles that were laid from another origin, named from a crossing that moves with it. Everything
 * else stays as it is: a border, chalk lines, faults and what is left are those of the layout given.
 */
export function relaid(layout: Layout, ground: Ground, laid: Laid, origin: Point): Layout {
  const { crossing } = layout.chalk;
  const moved = [
    crossing[0] + origin[0] - layout.origin[0],
    crossing[1] + origin[1] - layout.origin[1],
  ] as const;
  const pieces = namePieces(laidPieces(laid), laid.lattice, moved).map((one) =>
    pieceOf(one, laid.lattice, ground.faces),
  );
  return { ...layout, origin, pieces: [...pieces, ...layout.pieces.filter((piece) => piece.border)] };
}
