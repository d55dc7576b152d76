import { placesIn } from './insideTiles.ts';
import type { LaidPiece } from './LaidPiece.ts';
import { ringAt } from './Lattice.ts';
import type { Laid } from './layTiles.ts';
import { wholeTile } from './wholeTile.ts';

/** All pieces of a laid pattern: the tiles inside one by one, then what the field's edge meets. */
export function laidPieces({ inside, border, lattice }: Laid): LaidPiece[] {
  return [...placesIn(inside).map((place) => wholeTile(place, ringAt(lattice, place))), ...border];
}
