import type { Point } from '../../../geometry/index.ts';
import type { Ticks } from '../../../measure/index.ts';
import type { Pattern } from '../../../pattern/Pattern.ts';
import type { Face } from '../../frame/Face.ts';
import type { Ground } from '../../frame/Ground.ts';
import { type NamedEdge, namedEdge } from '../namedEdge.ts';
import { stretchOf } from '../stretchOf.ts';

/** A start told by the cuts at two walls that lie aslant, in whole saw steps, so that a job file can name it. */
export interface NamedAslant {
  readonly origin: Point;
  /** By axis, but one that the job holds: the wall, and the cut on the line along the axis through the wall's middle. */
  readonly at: readonly [AslantCut | undefined, AslantCut | undefined];
}

interface AslantCut {
  readonly wall: string;
  readonly cut: Ticks;
}

/**
 * Moves starts by less than a saw step to where cuts at walls say them exactly, on the axes that are free; undefined where no wall is
 * straight and aslant.
 *
 * @param step what saw sizes are rounded to.
 * @param free on which axes the job leaves the start open; on the other it stays where it is.
 */
export function namedAslant(
  ground: Ground,
  pattern: Pattern,
  step: Ticks,
  free: readonly [boolean, boolean] = [true, true],
): ((origin: Point) => NamedAslant) | undefined {
  const walls = ([0, 1] as const).map((axis) => (free[axis] ? wallFor(ground, axis) : undefined));
  if (walls.some((wall, axis) => free[axis] && !wall)) return undefined;
  const [along, across] = walls;
  const { a, b } = pattern;
  return ([x, y]) => {
    const up = across && cutAt(across, y, b[1], pattern, 1, step);
    // Told from other courses, a bond that steps on stands elsewhere along them.
    const courses = up ? Math.round((up.position - y) / b[1]) : 0;
    const own = along && cutAt(along, x + courses * b[0], a[0], pattern, 0, step);
    return {
      origin: [own?.position ?? x, up?.position ?? y],
      at: [
        along && own && { wall: along.wall, cut: own.cut },
        across && up && { wall: across.wall, cut: up.cut },
      ],
    };
  };
}

type AslantWall = NonNullable<NamedEdge['aslant']> & { readonly wall: string };

/** The longest straight wall that a line along the axis meets. */
function wallFor(ground: Ground, axis: 0 | 1): AslantWall | undefined {
  const walls = ground.faces.filter(({ id, name }) => id.replace(/\.\d+$/, '') === name);
  const longest = [...walls].sort((one, other) => lengthOf(other) - lengthOf(one));
  for (const { name } of longest) {
    const aslant = namedEdge(ground, name, axis)?.aslant;
    if (aslant) return { ...aslant, wall: name };
  }
  return undefined;
}

function lengthOf({ from, to }: Face): number {
  return Math.hypot(to[0] - from[0], to[1] - from[1]);
}

/** The cut nearest to what a wall leaves of a tile that stands at `position`, and where the tile then stands. */
function cutAt(
  { field, way }: AslantWall,
  position: number,
  repeat: number,
  pattern: Pattern,
  axis: 0 | 1,
  step: Ticks,
): { readonly cut: Ticks; readonly position: Ticks } {
  const { size } = stretchOf({ low: 0, high: 0 }, pattern, axis);
  const beyond = way > 0 ? position + size - field : field - position;
  const within = beyond - Math.floor(beyond / repeat) * repeat;
  const most = Math.floor(size / step) * step;
  const cut = Math.max(step, Math.min(most, Math.round(within / step) * step));
  return { cut, position: way > 0 ? field + cut - size : field - cut };
}
