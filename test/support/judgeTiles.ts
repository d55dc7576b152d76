import { bounds, type Point, type Ring } from '../../src/geometry/index.ts';
import type { Face } from '../../src/layout/frame/Face.ts';
import type { FieldEdge } from '../../src/layout/frame/fieldEdges.ts';
import type { Ground } from '../../src/layout/frame/Ground.ts';
import type { WallScore } from '../../src/layout/WallScore.ts';
import type { Pattern } from '../../src/pattern/Pattern.ts';
import { partInside } from './partInside.ts';
import { worstCut } from './worstCut.ts';

/** Places at which a wall that leans is looked at, and at each points that are spread over the length after which the tiles repeat. */
const [PLACES, POINTS] = [4, 12] as const;
/** As the documents say: lines may be 1/40 in off; a strip must be 308 ticks wider than the least then, a half may lack 508 in all. */
const [OFF, MARGIN, LENIENT, CLEAR] = [200, 308, 508, 32] as const;
/** Repeats each way in which a tile may lie at a point, and how many may go by before a wall sees the same again. */
const AROUND = [-1, 0, 1].flatMap((i) => [-1, 0, 1].map((j): Point => [i, j]));
const FAR = 14;
/** Ticks that rounding may move a tile by. */
const ROUNDING = 8;

type Inside = (point: Point) => number;

/**
 * What the walls in sight get from convex tiles of any shape, found by sawing the tile that lies at each of many points of each wall,
 * and measuring what is left of it along both axes of the frame. Walls lie along these axes or at 45° to them, near enough. Knows
 * nothing of phases or profiles. With so many `times` as many points, and half as many times the places, it sees smaller tips.
 */
export function judgeTiles(ground: Ground, pattern: Pattern, origin: Point, times = 1): WallScore {
  let [strips, halves, narrowest] = [0, 0, 1];
  const first = bounds(pattern.tiles[0]!.ring);
  const longest = Math.max(first.maxX - first.minX, first.maxY - first.minY);
  for (const edge of ground.edges) {
    const face = ground.faces[edge.face]!;
    if (face.circle || face.seen === 'hidden') continue;
    const length = Math.hypot(edge.to[0] - edge.from[0], edge.to[1] - edge.from[1]);
    const weight = face.seen === 'focal' || face.doorway ? 2 : 1;
    const inward = inwardOf(edge);
    const points = wallPoints(edge, inward, pattern, times);
    for (const at of points) {
      const cut = worstCut(inward, origin, OFF, (moved) => cutAt(at, inward, face, ground, pattern, moved));
      if (!cut) continue;
      strips += cut.thin ? (length * weight) / points.length : 0;
      halves += (cut.lacks * length * weight) / points.length;
      if (length >= longest) narrowest = Math.min(narrowest, cut.share);
    }
  }
  return { strips, halves, narrowest };
}

/** The field is on the left of its edge; one that leans is looked at as if it did not, place by place. */
function inwardOf({ from, to }: FieldEdge): Point {
  const turn = Math.round((Math.atan2(to[1] - from[1], to[0] - from[0]) + Math.PI / 2) / (Math.PI / 4));
  return [Math.cos((turn * Math.PI) / 4), Math.sin((turn * Math.PI) / 4)];
}

function wallPoints(edge: FieldEdge, [nx, ny]: Point, pattern: Pattern, times: number): Point[] {
  const points = times * POINTS;
  const [dx, dy] = [edge.to[0] - edge.from[0], edge.to[1] - edge.from[1]];
  const places = Math.abs(dx * nx + dy * ny) < 4 ? 1 : PLACES * Math.ceil(times / 2);
  const again = repeatAlong([ny, -nx], pattern);
  return Array.from({ length: places * points }, (_, i): Point => {
    const part = (Math.floor(i / points) + 0.5) / places;
    const along = (((i % points) + 0.5) / points) * again;
    return [edge.from[0] + part * dx + along * ny, edge.from[1] + part * dy - along * nx];
  });
}

/** The length after which the tiles are the same along a direction. */
function repeatAlong([u, v]: Point, { a, b }: Pattern): number {
  let least = Infinity;
  for (let i = -FAR; i <= FAR; i++) {
    for (let j = -FAR; j <= FAR; j++) {
      const [x, y] = [i * a[0] + j * b[0], i * a[1] + j * b[1]];
      const length = Math.abs(x * u + y * v);
      if (length > ROUNDING && length < least && Math.abs(x * v - y * u) < ROUNDING) least = length;
    }
  }
  if (least === Infinity) throw new Error('the tiles are never the same again along this wall');
  return least;
}

/** The tile that lies at a point of the wall, sawn along it; undefined where it is whole or is left out. */
function cutAt(at: Point, inward: Point, face: Face, ground: Ground, pattern: Pattern, origin: Point) {
  const tile = tileAt(at, pattern, origin);
  const inside: Inside = ([x, y]) => (x - at[0]) * inward[0] + (y - at[1]) * inward[1];
  const deepest = Math.max(...tile.map(inside));
  if (deepest <= Math.max(0, face.gapMax - face.gap - pattern.joint) - CLEAR) return undefined;
  if (Math.min(...tile.map(inside)) >= 0) return undefined;
  const [wide, deep] = sidesOf(tile);
  const [across, up] = deepest <= 0 ? [0, 0] : sidesOf(partInside(tile, inside));
  const least = (side: number) => ground.minShare * (side + pattern.joint) - pattern.joint - LENIENT;
  const strip = Math.min(ground.minStrip, Math.floor(Math.min(wide, deep) / 2));
  const part = (length: number, side: number) => (least(side) <= 0 ? 1 : length / least(side));
  return {
    thin: deepest <= MARGIN || slotOf(partInside(tile, (point) => inside(point) - MARGIN)) < strip,
    lacks: Math.max(0, 1 - Math.min(part(across, wide), part(up, deep))),
    share: Math.min(across / wide, up / deep),
  };
}

function sidesOf(ring: Ring): Point {
  const { minX, minY, maxX, maxY } = bounds(ring);
  return [maxX - minX, maxY - minY];
}

/** Of all tiles near a point the one in which it lies deepest, or to which it is nearest. */
function tileAt(at: Point, { a, b, tiles, joint }: Pattern, origin: Point): Ring {
  const area = a[0] * b[1] - a[1] * b[0];
  let [best, least]: [Ring, number] = [[], Infinity];
  for (const { ring } of tiles) {
    const { minX, minY, maxX, maxY } = bounds(ring);
    const [x, y] = [at[0] - origin[0], at[1] - origin[1]];
    const [u, v] = [x - (minX + maxX) / 2, y - (minY + maxY) / 2];
    const [i, j] = [Math.round((u * b[1] - v * b[0]) / area), Math.round((v * a[0] - u * a[1]) / area)];
    for (const [p, q] of AROUND) {
      const by: Point = [(i + p) * a[0] + (j + q) * b[0], (i + p) * a[1] + (j + q) * b[1]];
      if (Math.abs(u - by[0]) > (maxX - minX) / 2 + joint || Math.abs(v - by[1]) > (maxY - minY) / 2 + joint)
        continue;
      const out = outOf(ring, [x - by[0], y - by[1]]);
      if (out >= least) continue;
      least = out;
      best = ring.map(([px, py]): Point => [px + by[0] + origin[0], py + by[1] + origin[1]]);
    }
  }
  return best;
}

/** How far a point lies outside of the side of a convex ring that it is farthest out of; below 0 inside. */
function outOf(ring: Ring, point: Point): number {
  return Math.max(...ring.map((from, i) => aheadOf(from, ring[(i + 1) % ring.length]!, point)));
}

/** How far a point lies to the right of the line from one point to another. */
function aheadOf(from: Point, to: Point, [x, y]: Point): number {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  return ((x - from[0]) * dy - (y - from[1]) * dx) / Math.hypot(dx, dy);
}

/** The narrowest slot that a convex ring passes through: across one of its sides. */
function slotOf(ring: Ring): number {
  const across = ring.flatMap((from, i) => {
    const to = ring[(i + 1) % ring.length]!;
    if (Math.hypot(to[0] - from[0], to[1] - from[1]) < 1) return [];
    return [Math.max(...ring.map((point) => -aheadOf(from, to, point)))];
  });
  return Math.min(...across);
}
