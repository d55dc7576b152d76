import { distancePointSegment, lineThroughShape, type Point, type Shape } from '../geometry/index.ts';
import { laidEnds } from '../layout/start/laidEnds.ts';
import { otherCourses } from '../layout/start/otherCourses.ts';
import type { Ticks } from '../measure/index.ts';
import type { PacketEdge, PacketSurface } from '../packet/Packet.ts';
import { direction } from './Scale.ts';

/** Where an axis leaves the room, and the cut that lies there. */
export interface AxisEnd {
  /** Size of the cut, and of a whole tile, along the axis. */
  readonly size: Ticks;
  readonly of: Ticks;
  /** Smallest cut of the other courses of a running bond there; undefined where there are none. */
  readonly other: Ticks | undefined;
  readonly wall: Point;
  readonly edge: PacketEdge | undefined;
  /** The way the axis points there, in degrees. */
  readonly turn: number;
}

/** The four ends of the axes through the chalk crossing: right, up, left and down in the frame. */
export function axisEnds(surface: PacketSurface): readonly AxisEnd[] {
  const [length, width] = tileSize(surface);
  const { along, across } = surface.start.chosen.ends;
  const all = [
    { size: along[1], of: length, turn: 0 },
    { size: across[1], of: width, turn: 90 },
    { size: along[0], of: length, turn: 180 },
    { size: across[0], of: width, turn: 270 },
  ].map((one) => atWall(surface, one));
  const [high, , low] = all.map(({ size, spare }) => size + spare) as [Ticks, Ticks, Ticks, Ticks];
  const others = otherCourses(surface.pattern, surface.joint, [low, high]);
  const otherAt = (turn: number) => (turn === 0 ? others[1] : turn === 180 ? others[0] : undefined);
  return all.map(({ spare: _, ...end }) => ({
    ...end,
    other: end.edge?.arc ? undefined : otherAt(end.turn),
  }));
}

/** Where an axis leaves the room, and the size of the cut it ends in there. */
function atWall<End extends { readonly size: Ticks; readonly turn: number }>(
  surface: PacketSurface,
  end: End,
) {
  const towards = direction(end.turn);
  const wall = leaves(surface.chalk.crossing, [{ outer: surface.outline, holes: [] }], towards);
  const edge = surface.edges.find(({ from, to }) => distancePointSegment(wall, from, to) < 1);
  const size = cutOnLine(surface, edge, towards, end.size) ?? end.size;
  const axis = towards[0] === 0 ? 1 : 0;
  const isWhole = Math.abs(size - tileSize(surface)[axis]) <= ROUNDING;
  return { ...end, wall, edge, size, spare: isWhole ? spareAt(surface, axis, towards) : 0 };
}

/** How much more than a whole tile at the end of an axis there is room for before the gap: the tile of other courses is cut to reach as far. */
function spareAt(surface: PacketSurface, axis: 0 | 1, towards: Point): Ticks {
  const { start, joint } = surface;
  const at = fieldEnd(surface, axis, towards);
  const size = tileSize(surface)[axis];
  const [module, origin] = [size + joint, start.chosen.origin[axis]];
  const out = towards[axis] > 0 ? at - origin - size : origin - at;
  return out - Math.round(out / module) * module;
}

/** Length and width of the pattern's first tile along the frame's axes. */
function tileSize(surface: PacketSurface): readonly [number, number] {
  const ring = surface.pattern.tiles[0]?.ring ?? [];
  const range = (values: number[]) => Math.max(...values) - Math.min(...values);
  return [range(ring.map(([x]) => x)), range(ring.map(([, y]) => y))];
}

/** Where a ray from the crossing leaves some shapes for good. */
function leaves(crossing: Point, shapes: readonly Shape[], towards: Point): Point {
  const spans = shapes.flatMap((shape) => lineThroughShape(shape, crossing, towards));
  const t = Math.max(0, ...spans.map(({ to }) => to));
  return [crossing[0] + towards[0] * t, crossing[1] + towards[1] * t];
}

/**
 * The cut that a chalk line ends in where the run from which the floor was started tells nothing of it: at a curved wall, and where that
 * run ended at something that stands in the room; undefined where the run's own end is this one.
 */
function cutOnLine(
  surface: PacketSurface,
  edge: PacketEdge | undefined,
  towards: Point,
  size: Ticks,
): Ticks | undefined {
  if (!edge) return undefined;
  const { pattern, joint, start } = surface;
  const axis = towards[0] === 0 ? 1 : 0;
  const at = fieldEnd(surface, axis, towards);
  const run = { low: at, high: at, lowFace: 0, highFace: 0 };
  const { tiles } = pattern;
  const ends = laidEnds(run, { tiles, joint }, axis, start.chosen.origin[axis], [edge]);
  const onLine = ends[towards[axis] > 0 ? 1 : 0];
  // A run is read somewhere along its wall, which may lean: so far its end may be off what the line finds.
  const lean = Math.abs(edge.to[axis] - edge.from[axis]) + ROUNDING;
  return edge.arc || apart(onLine, size, tileSize(surface)[axis] + joint) > lean ? onLine : undefined;
}

/** Rounding moves an end of a run, and the line that is laid over it, by so few ticks. */
const ROUNDING: Ticks = 8;

/** How far two ends of a run differ, whichever of them is counted from the joint before it. */
function apart(one: Ticks, other: Ticks, module: Ticks): Ticks {
  const off = Math.abs(one - other) % module;
  return Math.min(off, module - off);
}

/** Where the field ends on an axis, in the pattern as it repeats. */
function fieldEnd(surface: PacketSurface, axis: 0 | 1, towards: Point): Ticks {
  const { chalk, field } = surface;
  return Math.round(leaves(chalk.crossing, field, towards)[axis]) - widened(surface, axis, towards);
}

/** How far soft joints that are laid wide move what lies at an end of an axis: none of them lies before its low end. */
function widened({ movement, joint }: PacketSurface, axis: 0 | 1, towards: Point): Ticks {
  if (!movement?.laid || towards[axis] < 0) return 0;
  const own = movement.lines.filter((line) => (line.axis === 'along' ? 0 : 1) === axis);
  return own.reduce((sum, { width }) => sum + width - joint, 0);
}
