import { type Point, translate } from '../../geometry/index.ts';
import type { Pattern } from '../../pattern/Pattern.ts';
import type { Ground } from '../frame/Ground.ts';
import type { WideJoint } from '../movement/WideJoint.ts';
import { type Bay, baysOf, isInBay, WHOLE } from './Bay.ts';
import { borderTiles } from './borderTiles.ts';
import { type InsideStretch, insideTiles, placesIn } from './insideTiles.ts';
import type { LaidPiece, LeftPart } from './LaidPiece.ts';
import { type Lattice, makeLattice, type Place, repeatedAt } from './Lattice.ts';
import { layTile } from './layTile.ts';

/** A pattern laid on a ground: tiles inside by course only, whatever the field's edge meets in full. */
export interface Laid {
  readonly lattice: Lattice;
  readonly inside: readonly InsideStretch[];
  readonly border: readonly LaidPiece[];
  readonly left: readonly LeftPart[];
}

/**
 * Lays a pattern with repeat (0, 0) at `origin`, pulled apart at its wide joints. Only the tiles that the field's edge meets are
 * clipped.
 */
export function layTiles(
  ground: Ground,
  pattern: Pattern,
  origin: Point,
  wide: readonly WideJoint[] = [],
): Laid {
  const parts = baysOf(wide).map((bay) => layBay(ground, pattern, origin, bay));
  return {
    lattice: makeLattice(pattern, origin, wide),
    inside: parts.flatMap(({ inside }) => inside),
    border: parts.flatMap(({ border }) => border),
    left: parts.flatMap(({ left }) => left),
  };
}

/** The tiles of one bay: those of the pattern moved as far as the bay, less what belongs to other bays. */
function layBay(ground: Ground, pattern: Pattern, origin: Point, bay: Bay): Omit<Laid, 'lattice'> {
  const lattice = makeLattice(pattern, translate(origin, bay.shift));
  const isOwn = (place: Place) => bay === WHOLE || isInBay(bay, repeatedAt({ pattern, origin }, place));
  const met = borderTiles(lattice, ground.edges);
  const border: LaidPiece[] = [];
  const left: LeftPart[] = [];
  for (const tile of met.values()) {
    if (!isOwn(tile.place)) continue;
    const laid = layTile(ground, tile, pattern.joint);
    border.push(...laid.pieces);
    left.push(...laid.left);
  }
  const inside = insideTiles(lattice, ground.edges, met.values());
  return { inside: bay === WHOLE ? inside : inside.flatMap((one) => ownPart(one, isOwn)), border, left };
}

/** The tiles of a stretch that belong to a bay: side by side, as the bay is a rectangle. */
function ownPart(stretch: InsideStretch, isOwn: (place: Place) => boolean): InsideStretch[] {
  const own = placesIn([stretch]).filter(isOwn);
  const [first, last] = [own[0], own.at(-1)];
  return first && last ? [{ ...stretch, first: first.i, last: last.i }] : [];
}
