import { distancePointSegment, type Point, type Ring, rangeOn } from '../geometry/index.ts';
import type { Ticks } from '../measure/index.ts';
import type { PacketEdge, PacketPiece, PacketSurface } from '../packet/Packet.ts';

/** Rounding moves a corner of a piece by so few ticks. */
const ROUNDING: Ticks = 8;

/** A piece with a side along a wall: how long it is square to that, at its longer and its shorter end, and how far along it from a line. */
export interface WallCut {
  readonly size: Ticks;
  readonly least: Ticks;
  readonly away: Ticks;
}

/** What tiles end at: a wall, or a side of what stands in the room. */
export type Face = Pick<PacketEdge, 'from' | 'to' | 'gapMax' | 'arc'>;

/** The way from the room to a wall: an axis of the frame, up it or down. */
interface Way {
  readonly axis: 0 | 1;
  readonly sign: 1 | -1;
}

/** How far into the room a ring reaches, and how far out of it. */
function reach(ring: Ring, { axis, sign }: Way): readonly [number, number] {
  const [low, high] = rangeOn(ring, axis);
  return sign > 0 ? [low, high] : [-high, -low];
}

/** How far a wall leans from square over its length. */
export function leanOf({ from, to }: Pick<Face, 'from' | 'to'>, axis: 0 | 1): Ticks {
  return Math.abs(to[axis] - from[axis]) + ROUNDING;
}

function cutAt(piece: PacketPiece, edge: Face, way: Way, line: number): readonly WallCut[] {
  const ring = piece.shape.outer;
  const [inner, outer] = reach(ring, way);
  // What is cut on its inner side too is as long as something else in the room leaves it.
  if (Math.abs(inner - reach(piece.fullTile, way)[0]) > ROUNDING) return [];
  const [beside, lean] = [way.axis === 0 ? 1 : 0, leanOf(edge, way.axis)] as const;
  const side = ring.filter(
    (point) =>
      outer - way.sign * point[way.axis] <= lean &&
      distancePointSegment(point, edge.from, edge.to) <= edge.gapMax + ROUNDING,
  );
  // A corner alone, where a fold or another wall cuts the rest, ends short of the wall.
  if (side.length < 2) return [];
  const [low, high] = rangeOn(ring, beside);
  const least = Math.min(...side.map((point) => way.sign * point[way.axis])) - inner;
  return [{ size: outer - inner, least, away: Math.max(0, low - line, line - high) }];
}

/** How long a ring is on x and on y. */
export function sizeOf(ring: Ring): readonly [Ticks, Ticks] {
  const [[left, right], [bottom, top]] = [rangeOn(ring, 0), rangeOn(ring, 1)];
  return [right - left, top - bottom];
}

/** Whether tiles of a pattern differ in nothing but their place. */
function areAlike(tiles: PacketSurface['pattern']['tiles']): boolean {
  const sizes = tiles.map(({ ring }) => sizeOf(ring));
  return sizes.every((size) => size.every((one, axis) => Math.abs(one - sizes[0]![axis]!) <= ROUNDING));
}

/**
 * How long the pieces are that end at a wall, square to it, the nearest to a line first; empty where none ends there, at a curve, and of a
 * floor with a border, in tiles of several sizes or in tiles that lie several ways.
 *
 * @param crossing a point of the line, which runs towards the wall along an axis of the frame.
 */
export function cutsAtWall(
  { pattern, border, pieces }: PacketSurface,
  edge: Face,
  crossing: Point,
  towards: Point,
): readonly WallCut[] {
  if (border || edge.arc || !areAlike(pattern.tiles)) return [];
  const axis = towards[0] === 0 ? 1 : 0;
  const way: Way = { axis, sign: towards[axis] > 0 ? 1 : -1 };
  return pieces
    .filter((piece) => !piece.border)
    .flatMap((piece) => cutAt(piece, edge, way, crossing[1 - axis]!))
    .sort((a, b) => a.away - b.away);
}
