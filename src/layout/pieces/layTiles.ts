import type { Point } from '../../geometry/index.ts';
import type { Pattern } from '../../pattern/Pattern.ts';
import type { Ground } from '../frame/Ground.ts';
import { borderTiles } from './borderTiles.ts';
import { type InsideStretch, insideTiles } from './insideTiles.ts';
import type { LaidPiece, LeftPart } from './LaidPiece.ts';
import { type Lattice, makeLattice } from './Lattice.ts';
import { layTile } from './layTile.ts';

/** A pattern laid on a ground: tiles inside by course only, whatever the field's edge meets in full. */
export interface Laid {
  readonly lattice: Lattice;
  readonly inside: readonly InsideStretch[];
  readonly border: readonly LaidPiece[];
  readonly left: readonly LeftPart[];
}

/** Lays a pattern with repeat (0, 0) at `origin`. Only the tiles that the field's edge meets are clipped. */
export function layTiles(ground: Ground, pattern: Pattern, origin: Point): Laid {
  const lattice = makeLattice(pattern, origin);
  const met = borderTiles(lattice, ground.edges);
  const border: LaidPiece[] = [];
  const left: LeftPart[] = [];
  for (const tile of met.values()) {
    const laid = layTile(ground, tile, pattern.joint);
    border.push(...laid.pieces);
    left.push(...laid.left);
  }
  return { lattice, inside: insideTiles(lattice, ground.edges, met.values()), border, left };
}
