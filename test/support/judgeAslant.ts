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

/**
 * What the walls in sight get from square tiles that lie at 45° to them, found by sawing the tile that lies at each of many points
 * of each wall, and measuring what is left of it. Knows nothing of phases or profiles. With so many `times` as many points, and half as
 * many times the places, it sees smaller tips.
 */
export function judgeAslant(ground: Ground, pattern: Pattern, origin: Point, times = 1): WallScore {
  let [strips, halves, narrowest] = [0, 0, 1];
  const { minX, maxX } = bounds(pattern.tiles[0]!.ring);
  for (const edge of ground.edges) {
    const face = ground.faces[edge.face]!;
    if (face.circle || face.seen === 'hidden') continue;
    const length = Math.hypot(edge.to[0] - edge.from[0], edge.to[1] - edge.from[1]);
    const weight = face.seen === 'focal' || face.doorway ? 2 : 1;
    const points = wallPoints(edge, pattern, times);
    for (const at of points) {
      const cut = worstCut(inwardOf(edge), origin, OFF, (moved) =>
        cutAt(at, inwardOf(edge), face, ground, pattern, moved),
      );
      if (!cut) continue;
      strips += cut.thin ? (length * weight) / points.length : 0;
      halves += (cut.lacks * length * weight) / points.length;
      if (length >= maxX - minX) narrowest = Math.min(narrowest, cut.share);
    }
  }
  return { strips, halves, narrowest };
}

/** The field is on the left of its edge; one that leans is looked at as if it lay at 45°, place by place. */
const inwardOf = ({ from, to }: FieldEdge): Point => [
  -Math.SQRT1_2 * Math.sign(to[1] - from[1]),
  Math.SQRT1_2 * Math.sign(to[0] - from[0]),
];

function wallPoints(edge: FieldEdge, { a, b }: Pattern, times: number): Point[] {
  const points = times * POINTS;
  const [nx, ny] = inwardOf(edge);
  const [dx, dy] = [edge.to[0] - edge.from[0], edge.to[1] - edge.from[1]];
  const places = Math.abs(dx * nx + dy * ny) < 4 ? 1 : PLACES * Math.ceil(times / 2);
  return Array.from({ length: places * points }, (_, i): Point => {
    const part = (Math.floor(i / points) + 0.5) / places;
    const along = (((i % points) + 0.5) / points) * Math.hypot(a[0], b[1]);
    return [edge.from[0] + part * dx + along * ny, edge.from[1] + part * dy - along * nx];
  });
}

/** The tile whose place, with half a joint round it, a point of the wall lies in, sawn along the wall; undefined where it is whole or is left out. */
function cutAt(at: Point, inward: Point, face: Face, ground: Ground, pattern: Pattern, origin: Point) {
  const tile = tileAt(at, pattern, origin);
  const inside = ([x, y]: Point) => (x - at[0]) * inward[0] + (y - at[1]) * inward[1];
  const deepest = Math.max(...tile.map(inside));
  const { gap, gapMax } = face;
  if (deepest <= Math.max(0, gapMax - gap - pattern.joint) - CLEAR) return undefined;
  if (Math.min(...tile.map(inside)) >= 0) return undefined;
  const left = bounds(partInside(tile, inside));
  const [across, up] = [left.maxX - left.minX, left.maxY - left.minY];
  const { minX, minY, maxX, maxY } = bounds(tile);
  const size = Math.min(maxX - minX, maxY - minY);
  const least = ground.minShare * (size + pattern.joint) - pattern.joint - LENIENT;
  return {
    thin: deepest - MARGIN < Math.min(ground.minStrip, Math.floor(size / 2)),
    lacks: Math.max(0, 1 - Math.min(across, up) / least),
    share: Math.min(across / (maxX - minX), up / (maxY - minY)),
  };
}

function tileAt(at: Point, { a, b, tiles, joint }: Pattern, origin: Point): Ring {
  const { minX, minY } = bounds(tiles[0]!.ring);
  const i = Math.floor((at[0] - origin[0] - minX + joint / 2) / a[0]);
  const j = Math.floor((at[1] - origin[1] - minY + joint / 2) / b[1]);
  return tiles[0]!.ring.map(([x, y]): Point => [x + origin[0] + i * a[0], y + origin[1] + j * b[1]]);
}
