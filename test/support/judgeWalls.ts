import { bounds, type Point, type Ring } from '../../src/geometry/index.ts';
import type { FieldEdge } from '../../src/layout/frame/fieldEdges.ts';
import type { Ground } from '../../src/layout/frame/Ground.ts';
import type { WallScore } from '../../src/layout/WallScore.ts';
import type { Pattern } from '../../src/pattern/Pattern.ts';

/** Places at which a wall is looked at. */
const STATIONS = 24;
/** As the documents say: lines may be 1/40 in off; a strip must be 308 ticks wider than the least then, a half may lack 508 in all. */
const [OFF, MARGIN, LENIENT, CLEAR] = [200, 308, 508, 32] as const;

/**
 * What the walls in sight that lie along the frame's axes get, found by laying a rule square to the wall at many places and looking
 * which tile lies there. Rectangles only; knows nothing of phases, profiles or repeats of a direction.
 */
export function judgeWalls(ground: Ground, pattern: Pattern, origin: Point): WallScore {
  let [strips, halves, narrowest] = [0, 0, 1];
  const courses = pattern.tiles.length;
  const longest = longestSide(pattern.tiles[0]!.ring);
  for (const edge of ground.edges) {
    const face = ground.faces[edge.face]!;
    if (face.circle || face.seen === 'hidden') continue;
    const length = Math.hypot(edge.to[0] - edge.from[0], edge.to[1] - edge.from[1]);
    const weight = face.seen === 'focal' || face.doorway ? 2 : 1;
    for (let i = 0; i < STATIONS * courses; i++) {
      // Courses are shifted against each other: the wall is looked at with each of them first.
      const by = (pattern.b[1] * Math.floor(i / STATIONS)) / courses;
      const moved: Point = [origin[0], origin[1] + by];
      const isUpright = Math.abs(edge.to[1] - edge.from[1]) > Math.abs(edge.to[0] - edge.from[0]);
      const part = ((i % STATIONS) + 0.5) / STATIONS;
      const cut = cutAt(edge, part, ground, pattern, isUpright ? moved : origin);
      if (!cut) continue;
      strips += cut.thin ? (length * weight) / (STATIONS * courses) : 0;
      halves += (cut.lacks * length * weight) / (STATIONS * courses);
      if (length >= longest) narrowest = Math.min(narrowest, cut.share);
    }
  }
  return { strips, halves, narrowest };
}

function longestSide(ring: Ring): number {
  const { minX, minY, maxX, maxY } = bounds(ring);
  return Math.max(maxX - minX, maxY - minY);
}

/** The worst of the cuts at a place of a wall where the pattern may stand a little off either way. */
function cutAt(edge: FieldEdge, part: number, ground: Ground, pattern: Pattern, origin: Point) {
  const at = ([0, 1] as const).map((axis) => edge.from[axis] + part * (edge.to[axis] - edge.from[axis])) as [
    number,
    number,
  ];
  const axis = Math.abs(edge.to[0] - edge.from[0]) > Math.abs(edge.to[1] - edge.from[1]) ? 1 : 0;
  // The field is on the left of its edge.
  const inward = axis === 1 ? Math.sign(edge.to[0] - edge.from[0]) : -Math.sign(edge.to[1] - edge.from[1]);
  const { gap, gapMax } = ground.faces[edge.face]!;
  const absent = Math.max(0, gapMax - gap - pattern.joint) - CLEAR;
  const sizes = [-OFF, 0, OFF].flatMap((off) => {
    const found = tileAt(at, axis, inward * off, pattern, origin);
    if (!found) return [];
    const { low, high } = found;
    const depth = inward > 0 ? high - at[axis]! : at[axis]! - low;
    return depth <= absent || depth >= high - low ? [] : [{ depth, size: high - low }];
  });
  if (sizes.length === 0) return undefined;
  const { depth, size } = sizes.reduce((a, b) => (b.depth < a.depth ? b : a));
  const { minX, minY, maxX, maxY } = bounds(pattern.tiles[0]!.ring);
  const least = ground.minShare * (size + pattern.joint) - pattern.joint - LENIENT;
  return {
    thin: depth - MARGIN < Math.min(ground.minStrip, Math.floor(Math.min(maxX - minX, maxY - minY) / 2)),
    lacks: Math.max(0, 1 - depth / least),
    share: depth / size,
  };
}

/** The extent along an axis of the tile, with half a joint round it, in which a place lies; the pattern moved by `off` along it. */
function tileAt(at: Point, axis: 0 | 1, off: number, { a, b, tiles, joint }: Pattern, origin: Point) {
  const half = joint / 2;
  for (const { ring } of tiles) {
    const box = bounds(ring);
    const [x, y] = [at[0] - origin[0] - (axis === 0 ? off : 0), at[1] - origin[1] - (axis === 1 ? off : 0)];
    const j = Math.floor((y - box.minY + half) / b[1]);
    const inRow = y - j * b[1];
    if (inRow > box.maxY + half) continue;
    const i = Math.floor((x - j * b[0] - box.minX + half) / a[0]);
    const inTile = x - j * b[0] - i * a[0];
    if (inTile > box.maxX + half) continue;
    const [low, high] = axis === 0 ? [box.minX, box.maxX] : [box.minY, box.maxY];
    const moved = axis === 0 ? x - inTile : y - inRow;
    return { low: low + moved + origin[axis] + off, high: high + moved + origin[axis] + off };
  }
  return undefined;
}
