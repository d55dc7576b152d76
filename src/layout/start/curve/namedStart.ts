import { bounds, type Point } from '../../../geometry/index.ts';
import type { Ticks } from '../../../measure/index.ts';
import type { Pattern } from '../../../pattern/Pattern.ts';
import type { Ground } from '../../frame/Ground.ts';
import { leastRepeat } from '../search/leastRepeat.ts';
import { type CutWall, cutWalls } from './cutWalls.ts';

/** A start told by the cuts at two walls, in whole saw steps, so that a job file can name it. */
export interface NamedStart {
  readonly origin: Point;
  /** By axis, but one that the job holds: the wall, and the cut that it leaves of the tile that the pattern is counted from. */
  readonly at: readonly [NamedCut | undefined, NamedCut | undefined];
}

interface NamedCut {
  readonly wall: string;
  readonly cut: Ticks;
}

/**
 * Moves starts by less than a joint and a saw step to where cuts at walls say them exactly, on the axes that are free, to either side of
 * where they stand; the nearest first, none where no pair of walls can tell a start. Undefined where there is no wall at which a cut
 * can be told.
 *
 * @param step what saw sizes are rounded to.
 * @param free on which axes the job leaves the start open; on the other it stays where it is.
 */
export function namedStart(
  ground: Ground,
  pattern: Pattern,
  step: Ticks,
  free: readonly [boolean, boolean] = [true, true],
): ((origin: Point) => readonly NamedStart[]) | undefined {
  const walls = ([0, 1] as const).map((axis) => (free[axis] ? cutWalls(ground, axis) : [undefined]));
  if (walls.some(({ length }) => length === 0)) return undefined;
  const [alongs, acrosses] = walls as [readonly Wall[], readonly Wall[]];
  const pairs = alongs.flatMap((one) => acrosses.map((other) => [one, other] as const));
  return (origin) => {
    let best: readonly Named[] = [];
    for (const pair of pairs) {
      for (const at of placesAt(origin, pair, pattern, step)) {
        const names = namesOf(at, origin, pair, pattern, step);
        if (names[0]!.off < (best[0]?.off ?? pattern.joint + step)) best = names;
      }
      // Of walls that all tell a start well, the longest do.
      if (best[0] && best[0].off <= step / 2) break;
    }
    return best;
  };
}

/** A wall, or none on an axis that the job holds. */
type Wall = CutWall | undefined;
type Pair = readonly [along: Wall, across: Wall];

/** How far the start was moved for its name, on the axis on which that is more. */
interface Named extends NamedStart {
  readonly off: number;
}

/** What the tile that the pattern is counted from measures along x and y. */
function sizesOf({ tiles }: Pattern): Point {
  const { minX, minY, maxX, maxY } = bounds(tiles[0]!.ring);
  return [maxX - minX, maxY - minY];
}

/**
 * Where the pattern may stand, alike to an origin, for both walls of a pair to cut its tile or to lie in a joint beside it; on an axis
 * that the job holds, as near as cuts are told, as zigzags of tiles that are no whole number of widths long never stand quite so again.
 */
function placesAt(origin: Point, pair: Pair, pattern: Pattern, step: Ticks): readonly Point[] {
  const sizes = sizesOf(pattern);
  const spans = pair.map((wall, axis): Span => {
    const [at, size] = [origin[axis]!, sizes[axis]!];
    if (!wall) return [at - step / 2, at + step / 2];
    const { field, way } = wall;
    return way > 0 ? [field - size - pattern.joint, field] : [field - size, field + pattern.joint];
  });
  return repeatsIn(origin, spans as [Span, Span], pattern);
}

/** The cuts that tell a place, to either side of it on each axis. */
function namesOf(at: Point, origin: Point, pair: Pair, pattern: Pattern, step: Ticks): readonly Named[] {
  const sizes = sizesOf(pattern);
  const cuts = pair.map((wall, axis) => (wall ? cutsAt(wall, at[axis]!, sizes[axis]!, step) : [undefined]));
  const names = cuts[0]!.flatMap((along) =>
    cuts[1]!.map(
      (across): Named => ({
        origin: [along?.position ?? origin[0], across?.position ?? origin[1]],
        at: [along?.told, across?.told],
        off: Math.max(along?.off ?? 0, across?.off ?? 0),
      }),
    ),
  );
  return names.sort((one, other) => one.off - other.off);
}

type Span = readonly [low: number, high: number];

/** The places in a box at which the pattern stands alike. */
function repeatsIn(origin: Point, [xs, ys]: readonly [Span, Span], pattern: Pattern): Point[] {
  const { a, b } = leastRepeat(pattern);
  const area = a[0] * b[1] - a[1] * b[0];
  const corners = xs.flatMap((x) => ys.map((y): Point => [x - origin[0], y - origin[1]]));
  const [is, js] = [
    corners.map(([x, y]) => (x * b[1] - y * b[0]) / area),
    corners.map(([x, y]) => (y * a[0] - x * a[1]) / area),
  ];
  const found: Point[] = [];
  for (let i = Math.ceil(Math.min(...is)); i <= Math.max(...is); i++) {
    for (let j = Math.ceil(Math.min(...js)); j <= Math.max(...js); j++) {
      const [x, y] = [origin[0] + i * a[0] + j * b[0], origin[1] + i * a[1] + j * b[1]];
      if (x >= xs[0] && x <= xs[1] && y >= ys[0] && y <= ys[1]) found.push([x, y]);
    }
  }
  return found;
}

/** The cuts in whole steps next to what a wall leaves of a tile that stands at `position`, and where the tile then stands. */
function cutsAt({ wall, field, way }: CutWall, position: number, size: Ticks, step: Ticks) {
  const beyond = way > 0 ? position + size - field : field - position;
  const most = Math.floor(size / step) * step;
  const inSteps = [Math.floor, Math.ceil].map((to) =>
    Math.max(step, Math.min(most, to(beyond / step) * step)),
  );
  return [...new Set(inSteps)].map((cut) => {
    const stands = way > 0 ? field + cut - size : field - cut;
    return { told: { wall, cut }, position: stands, off: Math.abs(stands - position) };
  });
}
