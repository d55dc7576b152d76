import type { Point } from '../geometry/index.ts';
import type { Ground } from './frame/Ground.ts';
import type { Layout } from './Layout.ts';
import { drawnTogether } from './movement/drawnTogether.ts';
import { pulledApart } from './movement/pulledApart.ts';
import { namePieces, pieceOf } from './names/namePieces.ts';
import { laidPieces } from './pieces/laidPieces.ts';
import type { Laid } from './pieces/layTiles.ts';

/**
 * A layout with its pieces taken from tiles that were laid from another origin, named from a crossing that moves with it. Everything
 * else stays as it is: a border, chalk lines, faults and what is left are those of the layout given.
 */
export function relaid(layout: Layout, ground: Ground, laid: Laid, origin: Point): Layout {
  const { wide } = laid.lattice;
  const place = (axis: 0 | 1) => {
    const before = drawnTogether(layout.wide ?? [], axis, layout.chalk.crossing[axis]);
    return pulledApart(wide, axis, before + origin[axis] - layout.origin[axis]);
  };
  const pieces = namePieces(laidPieces(laid), laid.lattice, [place(0), place(1)]).map((one) =>
    pieceOf(one, laid.lattice, ground.faces),
  );
  return {
    ...layout,
    origin,
    ...(layout.wide && { wide }),
    pieces: [...pieces, ...layout.pieces.filter((piece) => piece.border)],
  };
}
