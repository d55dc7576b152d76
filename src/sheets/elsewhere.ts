import type { Cut } from '../cuts/Cut.ts';
import type { Point } from '../geometry/index.ts';
import type { TileSpec } from '../job/Job.ts';
import type { Packet, PacketSurface } from '../packet/Packet.ts';
import { slideOf } from '../tiles/slideOf.ts';
import type { CutTile } from '../tiles/TilePlan.ts';

/** Slides no farther apart than this, in ticks, are one. */
const ROUNDING = 4;

/** Where the pieces of a cut lie in their tiles, each with its tile, in the order of the plan. */
interface Slide {
  readonly tile: string;
  readonly by: Point;
  /** All pieces of the tile, and which of them it is. */
  readonly pieces: CutTile['pieces'];
  readonly at: number;
}

/** The floor that a cut is of. */
type Floor = Pick<PacketSurface, 'name'>;

const isSame = (one: Point, other: Point) => Math.hypot(one[0] - other[0], one[1] - other[1]) <= ROUNDING;

/** How far the pieces of a cut are moved along their tiles, as the tile sheet has them. */
function slidesOf({ tiles, spec, surfaces }: Packet, { name }: Floor, cut: Cut): readonly Slide[] {
  const tile: TileSpec = spec.tiles.find(({ key }) => key === cut.tile)!;
  // In the plans of tiles of several floors a piece bears its floor's name before its own.
  const own = new Set(surfaces.length > 1 ? cut.pieces.map((piece) => `${name}:${piece}`) : cut.pieces);
  return (tiles[cut.tile]?.from ?? []).flatMap((one) =>
    one.pieces
      .map((piece, at) => ({ piece, at }))
      .filter(({ piece }) => own.has(piece.piece))
      .map(({ piece, at }) => ({ tile: one.tile, by: slideOf(piece, tile), pieces: one.pieces, at })),
  );
}

/** The first of the tiles in which pieces of a cut lie as its card shows it: all its pieces, and which of them is meant. */
export function shownTile(packet: Packet, floor: Floor, cut: Cut): Slide | undefined {
  const slides = slidesOf(packet, floor, cut);
  const alike = slides.map(({ by }) => slides.filter((other) => isSame(by, other.by)).length);
  return slides[alike.indexOf(Math.max(...alike))];
}

/**
 * How far a cut's card shows it moved along its tile: as the tile sheet has most of its pieces, of as many those in the tile that is sawn first.
 */
export function shownSlide(packet: Packet, floor: Floor, cut: Cut): Point {
  return shownTile(packet, floor, cut)?.by ?? [0, 0];
}

/** The tiles in which pieces of a cut are sawn at another place than the cut's card shows: they are marked where the tile sheet has them. */
export function elsewhere(packet: Packet, floor: Floor, cut: Cut): readonly string[] {
  const shown = shownSlide(packet, floor, cut);
  const away = slidesOf(packet, floor, cut).filter(({ by }) => !isSame(by, shown));
  return [...new Set(away.map(({ tile }) => tile))];
}
