import type { Point } from '../geometry/index.ts';
import { laidEnds } from '../layout/start/laidEnds.ts';
import type { Ticks } from '../measure/index.ts';
import type { PacketEdge, PacketSurface } from '../packet/Packet.ts';
import { leanOf, sizeOf } from './cutsAtWall.ts';
import { leavesAt } from './leavesAt.ts';

/** Length and width of the pattern's first tile along the frame's axes. */
export function tileSize(surface: PacketSurface): readonly [number, number] {
  return sizeOf(surface.pattern.tiles[0]?.ring ?? []);
}

/** Where a line leaves the room, and what the start tells of its end. */
interface LineEnd {
  readonly size: Ticks;
  readonly wall: Point;
  readonly edge: PacketEdge | undefined;
}

/**
 * The cut that a chalk line ends in where the run from which the floor was started tells nothing of it: at a curved wall, and where that
 * run ended at something that stands in the room; undefined where the run's own end is this one.
 */
export function cutOnLine(
  surface: PacketSurface,
  { edge, wall, size }: LineEnd,
  towards: Point,
): Ticks | undefined {
  if (!edge) return undefined;
  const { pattern, joint, start } = surface;
  const axis = towards[0] === 0 ? 1 : 0;
  // What stands between says nothing of the wall.
  const short = Math.abs(leavesAt(surface.chalk.crossing, surface.field, towards)[axis] - wall[axis]);
  if (short > edge.gapMax + leanOf(edge, axis)) return undefined;
  const at = fieldEnd(surface, axis, towards);
  const run = { low: at, high: at, lowFace: 0, highFace: 0 };
  const { tiles } = pattern;
  const ends = laidEnds(run, { tiles, joint }, axis, start.chosen.origin[axis], [edge]);
  const onLine = ends[towards[axis] > 0 ? 1 : 0];
  // A run is read somewhere along its wall: so far its end may be off what the line finds.
  const isOther = apart(onLine, size, tileSize(surface)[axis] + joint) > leanOf(edge, axis);
  return edge.arc || isOther ? onLine : undefined;
}

/** How far two ends of a run differ, whichever of them is counted from the joint before it. */
function apart(one: Ticks, other: Ticks, module: Ticks): Ticks {
  const off = Math.abs(one - other) % module;
  return Math.min(off, module - off);
}

/** Where the field ends on an axis, in the pattern as it repeats. */
function fieldEnd(surface: PacketSurface, axis: 0 | 1, towards: Point): Ticks {
  const { chalk, field } = surface;
  return Math.round(leavesAt(chalk.crossing, field, towards)[axis]) - widened(surface, axis, towards);
}

/** How far soft joints that are laid wide move what lies at an end of an axis: none of them lies before its low end. */
function widened({ movement, joint }: PacketSurface, axis: 0 | 1, towards: Point): Ticks {
  if (!movement?.laid || towards[axis] < 0) return 0;
  const own = movement.lines.filter((line) => (line.axis === 'along' ? 0 : 1) === axis);
  return own.reduce((sum, { width }) => sum + width - joint, 0);
}
