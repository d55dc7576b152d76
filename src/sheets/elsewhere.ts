import type { Cut } from '../cuts/Cut.ts';
import { bounds, type Point, type Ring } from '../geometry/index.ts';
import type { Packet } from '../packet/Packet.ts';
import { tileOutline } from '../pattern/index.ts';

/** Rounding moves a tile that is turned onto its own place by no more than this, in ticks. */
const ROUNDING = 4;

/** A point of a cut where a plan of tiles has it: turned counter-clockwise about the origin, then moved. */
export function turnedAndMoved([x, y]: Point, degrees: number, [byX, byY]: Point): Point {
  const radians = (degrees * Math.PI) / 180;
  const [cos, sin] = [Math.cos(radians), Math.sin(radians)];
  return [x * cos - y * sin + byX, x * sin + y * cos + byY];
}

/** Whether a piece that is turned and moved lies in its tile as its card shows it, from the same factory edges. */
export function isAtHome(ring: Ring, turn: number, at: Point): boolean {
  const [own, moved] = [bounds(ring), bounds(ring.map((point) => turnedAndMoved(point, turn, at)))];
  return (['minX', 'minY', 'maxX', 'maxY'] as const).every(
    (side) => Math.abs(own[side] - moved[side]) <= ROUNDING,
  );
}

/**
 * The tiles in which pieces of a cut are sawn at another place than the cut's card shows: they share their tile with others, and are marked
 * where the tile sheet has them.
 */
export function elsewhere({ tiles, spec }: Packet, cut: Cut): readonly string[] {
  const tile = spec.tiles.find(({ key }) => key === cut.tile)!;
  const ring = tileOutline(tile);
  const own = new Set(cut.pieces);
  return (tiles[cut.tile]?.from ?? []).flatMap((one) => {
    const away = one.pieces.some(({ piece, turn, at }) => own.has(piece) && !isAtHome(ring, turn, at));
    return one.pieces.length > 1 && away ? [one.tile] : [];
  });
}
