import type { Point, Ring } from '../../../src/geometry/index.ts';
import type { Layout } from '../../../src/layout/Layout.ts';
import { judge, toJsts } from '../../geometry/oracle.ts';
import { type Piece, widthOf } from './shareByHand.ts';

/** Parts smaller than this, in square ticks, are of rounding. */
const SPECK = 40_000;

/** A floor laid from a start with nothing of the layout but its pattern and the field: whole tiles counted, parts by their tiles. */
export interface HandLaid {
  readonly whole: number;
  readonly cut: readonly Piece[];
  /** The least that a part measures along a side of its tile, as a share of that; and the least width of any part, in ticks. */
  readonly narrowest: number;
  readonly thinnest: number;
}

/** Lays each tile of the repeat, one by one over the field, and cuts it with the other library for polygons. */
export function layByHand({ pattern, frame }: Pick<Layout, 'pattern' | 'frame'>, origin: Point): HandLaid {
  const field = toJsts(frame.field);
  const rings = frame.field.flatMap(({ outer, holes }) => [outer, ...holes]);
  const edges = rings.flatMap((ring) => ring.map((from, i) => boxOf([from, ring[(i + 1) % ring.length]!])));
  let whole = 0;
  const cut: Piece[] = [];
  for (const { ring, quarter } of tilesOver(boxOf(rings.flat()), pattern, origin)) {
    const box = boxOf(ring);
    if (!edges.some((edge) => meet(edge, box))) {
      if (isInside(ring[0]!, rings)) whole += 1;
      continue;
    }
    const parts = partsOf(judge.intersection(toJsts([{ outer: ring, holes: [] }]), field));
    if (parts.length === 1 && Math.abs(areaOf(parts[0]!) - areaOf(ring)) < SPECK) whole += 1;
    else cut.push(...parts.map((part): Piece => ({ ring: part, tile: ring, quarter })));
  }
  return {
    whole,
    cut,
    narrowest: Math.min(1, ...cut.map(shareOf)),
    thinnest: Math.min(Infinity, ...cut.map(({ ring }) => widthOf(ring))),
  };
}

type Box = readonly [number, number, number, number];

function boxOf(points: readonly Point[]): Box {
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)];
}

function meet(one: Box, other: Box): boolean {
  return one[0] <= other[2] && other[0] <= one[2] && one[1] <= other[3] && other[1] <= one[3];
}

/** All tiles that a box may meet: repeats are gone through in rows till all its corners are passed. */
function tilesOver(box: Box, { a, b, tiles }: Layout['pattern'], origin: Point) {
  const area = a[0] * b[1] - a[1] * b[0];
  const corners: Point[] = [[box[0], box[1]], [box[2], box[1]], [box[0], box[3]], [box[2], box[3]]]; // biome-ignore format: corners on a line
  const off = corners.map(([x, y]): Point => [x - origin[0], y - origin[1]]);
  const is = off.map(([x, y]) => (x * b[1] - y * b[0]) / area);
  const js = off.map(([x, y]) => (y * a[0] - x * a[1]) / area);
  const found: { ring: Ring; quarter: number }[] = [];
  for (let i = Math.floor(Math.min(...is)) - 3; i <= Math.max(...is) + 3; i++) {
    for (let j = Math.floor(Math.min(...js)) - 3; j <= Math.max(...js) + 3; j++) {
      const [x, y] = [origin[0] + i * a[0] + j * b[0], origin[1] + i * a[1] + j * b[1]];
      for (const { ring, quarter } of tiles) {
        const placed = ring.map(([u, v]): Point => [x + u, y + v]);
        if (meet(boxOf(placed), box)) found.push({ ring: placed, quarter });
      }
    }
  }
  return found;
}

/** Whether a ray to the right crosses the outlines an odd number of times. */
function isInside([x, y]: Point, rings: readonly Ring[]): boolean {
  const crossings = rings.flatMap((ring) =>
    ring.filter((from, i) => {
      const to = ring[(i + 1) % ring.length]!;
      if (from[1] > y === to[1] > y) return false;
      return from[0] + ((y - from[1]) / (to[1] - from[1])) * (to[0] - from[0]) > x;
    }),
  );
  return crossings.length % 2 === 1;
}

// biome-ignore lint/suspicious/noExplicitAny: the library's own types do not cover its geometry.
function partsOf(geometry: any): Ring[] {
  return Array.from({ length: geometry.getNumGeometries() }, (_, i) => geometry.getGeometryN(i))
    .filter((part) => part.getArea() > SPECK)
    .map((part) => {
      const ring = part.getExteriorRing().getCoordinates().slice(1);
      const points = ring.map(({ x, y }: { x: number; y: number }): Point => [x, y]);
      return signedArea(points) > 0 ? points : points.reverse();
    });
}

function signedArea(ring: Ring): number {
  return ring.reduce((sum, [x, y], i) => {
    const [u, v] = ring[(i + 1) % ring.length]!;
    return sum + (x * v - u * y) / 2;
  }, 0);
}

const areaOf = (ring: Ring) => Math.abs(signedArea(ring));

function shareOf({ ring, tile }: Piece): number {
  const [own, full] = [boxOf(ring), boxOf(tile)];
  return Math.min((own[2] - own[0]) / (full[2] - full[0]), (own[3] - own[1]) / (full[3] - full[1]));
}
