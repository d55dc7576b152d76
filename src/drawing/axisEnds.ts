import { distancePointSegment, type Point } from '../geometry/index.ts';
import { otherCourses } from '../layout/start/otherCourses.ts';
import type { Ticks } from '../measure/index.ts';
import type { PacketEdge, PacketSurface } from '../packet/Packet.ts';
import { cutOnLine, tileSize } from './cutOnLine.ts';
import { cutsAtWall, type Face, leanOf, type WallCut } from './cutsAtWall.ts';
import { leavesAt } from './leavesAt.ts';
import { type CutRange, rangeNear } from './rangeNear.ts';
import { direction } from './Scale.ts';

/** Where an axis leaves the room, and the cut that lies there. */
export interface AxisEnd {
  /** Size of the cut, and of a whole tile, along the axis. */
  readonly size: Ticks;
  readonly of: Ticks;
  /** Smallest cut of the other courses of a running bond there; undefined where there are none. */
  readonly other: Ticks | undefined;
  /** From what to what the cuts along the whole wall are sawn that are as that on the line, and as the other one, but for the wall's lean. */
  readonly sizes?: CutRange;
  readonly others?: CutRange;
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
  const [high, , low] = all.map(({ size }) => size) as [Ticks, Ticks, Ticks, Ticks];
  const others = otherCourses(surface.pattern, surface.joint, [low, high]);
  const otherAt = (turn: number) => (turn === 0 ? others[1] : turn === 180 ? others[0] : undefined);
  return all.map(({ told, ...end }) => {
    const laid = asLaid(surface, { ...end, size: told });
    if (laid) return { ...end, ...laid };
    const face = faceBefore(surface, direction(end.turn));
    const sizes = face && rangeNear(surface, [face], direction(end.turn))(end.size);
    return { ...end, other: end.edge?.arc ? undefined : otherAt(end.turn), ...(sizes && { sizes }) };
  });
}

/**
 * What the pieces along a wall are cut to: of the one nearest the line, and the smallest of those that differ from it by more than the wall
 * leans; undefined where none ends there. Where the start tells the size of one of those on the line, it is that one.
 */
function asLaid(
  surface: PacketSurface,
  { edge, size, turn }: Pick<AxisEnd, 'edge' | 'size' | 'turn'>,
): Pick<AxisEnd, 'size' | 'other' | 'sizes' | 'others'> | undefined {
  if (!edge) return undefined;
  const towards = direction(turn);
  const cuts = cutsAtWall(surface, edge, surface.chalk.crossing, towards);
  const lean = leanOf(edge, towards[0] === 0 ? 1 : 0);
  const first = nearest(cuts, surface.joint, size);
  if (!first) return undefined;
  const own = Math.abs(first.size - size) <= lean ? size : first.size;
  const others = cuts.filter((one) => Math.abs(one.size - own) > lean).map((one) => one.size);
  const other = others.length > 0 ? Math.min(...others) : undefined;
  const wall = (id: string) => id.replace(/\.\d+$/, '');
  const parts = surface.edges.filter(({ id }) => wall(id) === wall(edge.id));
  const near = rangeNear(surface, parts, towards);
  return { size: own, other, sizes: near(own), ...(other !== undefined && { others: near(other) }) };
}

/** The straight face of what stands in the room that the field ends at before the wall. */
function faceBefore({ chalk, field, obstacles }: PacketSurface, towards: Point): Face | undefined {
  const at = leavesAt(chalk.crossing, field, towards);
  const faces = obstacles.filter(({ circle }) => !circle).flatMap(({ edges }) => edges);
  const axis = towards[0] === 0 ? 1 : 0;
  // A face along the line ends no tile across it.
  const isAcross = ({ from, to }: Face) =>
    leanOf({ from, to }, axis) < Math.abs(to[1 - axis]! - from[1 - axis]!);
  return faces.find(
    (face) => isAcross(face) && distancePointSegment(at, face.from, face.to) <= face.gapMax + 1,
  );
}

/** The cut nearest the line; of two that share the joint on which it lies, the one that is nearer in size to what the start tells. */
function nearest(cuts: readonly WallCut[], joint: Ticks, told: Ticks): WallCut | undefined {
  const off = ({ size }: WallCut) => Math.abs(size - told);
  return cuts.filter(({ away }) => away <= cuts[0]!.away + joint).sort((a, b) => off(a) - off(b))[0];
}

/** Where an axis leaves the room, and the size of the cut it ends in there. */
function atWall<End extends { readonly size: Ticks; readonly turn: number }>(
  surface: PacketSurface,
  end: End,
) {
  const towards = direction(end.turn);
  const wall = leavesAt(surface.chalk.crossing, [{ outer: surface.outline, holes: [] }], towards);
  const edge = surface.edges.find(({ from, to }) => distancePointSegment(wall, from, to) < 1);
  const size = cutOnLine(surface, { edge, wall, size: end.size }, towards) ?? end.size;
  return { ...end, told: end.size, wall, edge, size };
}
