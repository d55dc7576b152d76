import type { Point, Ring } from '../../../src/geometry/index.ts';
import type { TileSpec } from '../../../src/job/Job.ts';
import { partInside } from '../../support/partInside.ts';

/** A part of a tile, counter-clockwise, where both lie; `quarter` turns of the tile to the frame. */
export interface Piece {
  readonly ring: Ring;
  readonly tile: Ring;
  readonly quarter: number;
}

/** The blade with the step that a cut may be rounded up by, the narrowest offcut that is kept, and how a tile may be turned. */
export interface ShareRules {
  readonly blade: number;
  readonly narrowest: number;
  readonly turns: TileSpec['turns'];
}

/** What a tile is sawn into so far, about its middle, and which way it lies. */
interface Shared {
  readonly rings: Ring[];
  readonly quarter: number;
}

/**
 * A number of tiles that parts can be sawn from: the largest first, each into the first tile where one saw line right across parts it from
 * all that is there, at its own place in the tile or turned so that the tile looks as before. Never fewer than are needed.
 */
export function shareByHand(pieces: readonly Piece[], rules: ShareRules): number {
  const tiles: Shared[] = [];
  const own = pieces.map((piece) => ({ ...centred(piece), quarter: piece.quarter }));
  own.sort((one, other) => areaOf(other.ring) - areaOf(one.ring));
  for (const { ring, tile, quarter } of own) {
    const ways = turned(ring, tile, rules);
    const place = tiles
      .filter((one) => rules.turns === 'any' || one.quarter === quarter)
      .flatMap((shared) => ways.map((way) => ({ shared, way })))
      .find(({ shared, way }) => isApart(way, shared.rings, tile, rules));
    if (place) place.shared.rings.push(place.way);
    else tiles.push({ rings: [ring], quarter });
  }
  return tiles.length;
}

/** The piece about the middle of its tile, which lies along x. */
function centred({ ring, tile, quarter }: Piece): { ring: Ring; tile: Ring } {
  const middle = [0, 1].map((axis) => tile.reduce((sum, point) => sum + point[axis]!, 0) / tile.length);
  const back = (points: Ring) =>
    points.map(([x, y]) => turn([x - middle[0]!, y - middle[1]!], (-quarter * Math.PI) / 2));
  return { ring: back(ring), tile: back(tile) };
}

function turn([x, y]: Point, by: number): Point {
  const [c, s] = [Math.cos(by), Math.sin(by)];
  return [c * x - s * y, s * x + c * y];
}

/** A hexagon looks the same at every sixth of a turn, any other tile is taken to do so at the half only. */
function turned(ring: Ring, tile: Ring, { turns }: ShareRules): Ring[] {
  const count = turns === 'none' ? 1 : turns === 'any' && tile.length === 6 ? 6 : 2;
  return Array.from({ length: count }, (_, i) => ring.map((point) => turn(point, (i * 2 * Math.PI) / count)));
}

/** Whether a line along an edge of the new part, or of one that is there, has it on one side and all others beyond the blade on the other. */
function isApart(ring: Ring, others: readonly Ring[], tile: Ring, rules: ShareRules): boolean {
  const rest = others.flat();
  const parts = (edges: Ring, kept: readonly Point[], beyond: readonly Point[]) =>
    edges.some((from, i) => {
      const out = outside(from, edges[(i + 1) % edges.length]!);
      if (kept.some((point) => out(point) > 1) || beyond.some((point) => out(point) < rules.blade))
        return false;
      return widthOf(partInside(tile, (point) => out(point) - rules.blade)) >= rules.narrowest;
    });
  return parts(ring, ring, rest) || others.some((one) => parts(one, rest, ring));
}

/** How far to the right of a line a point lies. */
function outside(from: Point, to: Point): (point: Point) => number {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const length = Math.hypot(dx, dy);
  return ([x, y]) => (length === 0 ? 0 : (dy * (x - from[0]) - dx * (y - from[1])) / length);
}

function areaOf(ring: Ring): number {
  return Math.abs(
    ring.reduce((sum, [x, y], i) => {
      const [u, v] = ring[(i + 1) % ring.length]!;
      return sum + (x * v - u * y) / 2;
    }, 0),
  );
}

/** The least width of a ring between two parallel lines, one of which runs along a side of it. */
export function widthOf(ring: Ring): number {
  const widths = ring.flatMap((from, i) => {
    const to = ring[(i + 1) % ring.length]!;
    if (Math.hypot(to[0] - from[0], to[1] - from[1]) < 1) return [];
    const all = ring.map(outside(from, to));
    return [Math.max(...all) - Math.min(...all)];
  });
  return ring.length < 3 ? 0 : Math.min(...widths);
}
