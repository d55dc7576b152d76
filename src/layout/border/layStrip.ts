import { bounds, pointInShape, type Ring } from '../../geometry/index.ts';
import type { Ticks } from '../../measure/index.ts';
import type { Ground } from '../frame/Ground.ts';
import type { LaidPiece, LeftPart } from '../pieces/LaidPiece.ts';
import type { Place } from '../pieces/Lattice.ts';
import { layTile } from '../pieces/layTile.ts';
import { type Through, throughTile } from '../pieces/throughTile.ts';
import { wholeTile } from '../pieces/wholeTile.ts';

/** A tile of a strip in place. */
export interface StripTile {
  readonly place: Place;
  readonly ring: Ring;
}

/** Tiles that stand one by one, cut by the edges of what they are laid on. */
export function layStrip(
  ground: Ground,
  tiles: readonly StripTile[],
  joint: Ticks,
): { readonly pieces: readonly LaidPiece[]; readonly left: readonly LeftPart[] } {
  const laid = tiles.map((tile) => {
    const crossings = crossingsOf(tile.ring, ground);
    if (crossings.size > 0) return layTile(ground, { ...tile, crossings }, joint);
    const { minX, maxX, minY, maxY } = bounds(tile.ring);
    const inside = ground.frame.field.some((shape) =>
      pointInShape([(minX + maxX) / 2, (minY + maxY) / 2], shape),
    );
    return { pieces: inside ? [wholeTile(tile.place, tile.ring)] : [], left: [] };
  });
  return { pieces: laid.flatMap(({ pieces }) => pieces), left: laid.flatMap(({ left }) => left) };
}

function crossingsOf(ring: Ring, { edges }: Ground): Map<number, Through> {
  const crossings = new Map<number, Through>();
  edges.forEach(({ from, to }, edge) => {
    const through = throughTile(ring, from, to);
    if (through) crossings.set(edge, through);
  });
  return crossings;
}
