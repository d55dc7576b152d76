import type { Cut } from '../../cuts/Cut.ts';
import { type Turn, turnPoint } from '../../cuts/TileBox.ts';
import {
  distancePointSegment,
  type Point,
  type Ring,
  subtract,
  transformRing,
  transformShape,
} from '../../geometry/index.ts';
import { innerCorners, type TileSides, tileRing } from '../cutFrame.ts';
import { circleOf, type TrueCircle } from '../trueCircle.ts';
import type { LaidCut, LaidEdge } from './LaidCut.ts';

/** Corners within this many ticks of a side of the tile lie on it: they were turned and rounded. */
const near = 4;

/** Lays a cut on the paper, turned counter-clockwise, exactly as it is: nothing is rounded. */
export function layCut(cut: Cut, tile: TileSides, turn: Turn): LaidCut {
  const move = (point: Point) => turnPoint(point, turn, tile);
  const ring = transformRing(tileRing(tile), move);
  const shape = transformShape(cut.shape, move);
  const rings = [shape.outer, ...shape.holes];
  const inner = innerCorners(cut).map(move);
  const circles = cut.circles.map(({ centre, radius }) => ({ centre: move(centre), radius }));
  return {
    tile: ring,
    shape,
    waste: subtract([{ outer: ring, holes: [] }], [shape]),
    edges: rings.flatMap((one) => edgesOf(one, ring, inner, circles)),
    inner: inner.map((at) => ({ at, ways: waysFrom(at, rings) })),
    centres: circles.map(({ centre }) => centre),
  };
}

/** The sides of a ring of the piece; `inner` are its inner corners, `circles` the true circles it follows. */
function edgesOf(
  ring: Ring,
  tile: Ring,
  inner: readonly Point[],
  circles: readonly TrueCircle[],
): LaidEdge[] {
  const along = (i: number, ...spots: readonly Point[]) =>
    spots.every((spot) => distancePointSegment(spot, tile[i]!, tile[(i + 1) % tile.length]!) <= near);
  const ends = ([x, y]: Point) => inner.some((corner) => corner[0] === x && corner[1] === y);
  return ring.map((from, i) => {
    const to = ring[(i + 1) % ring.length]!;
    const factory = tile.some((_, at) => along(at, from, to));
    const odd = !factory && (ends(from) || ends(to) || circleOf(from, to, circles) !== undefined);
    return { from, to, factory, odd };
  });
}

/** The neighbours of a corner on its ring. */
function waysFrom(corner: Point, rings: readonly Ring[]): readonly [Point, Point] {
  for (const ring of rings) {
    const i = ring.findIndex(([x, y]) => x === corner[0] && y === corner[1]);
    if (i >= 0) return [ring[(i + ring.length - 1) % ring.length]!, ring[(i + 1) % ring.length]!];
  }
  return [corner, corner];
}
