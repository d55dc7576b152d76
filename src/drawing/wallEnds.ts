import { type Point, unitAlong } from '../geometry/index.ts';
import type { PacketEdge, PacketSurface } from '../packet/Packet.ts';
import type { AxisEnd } from './axisEnds.ts';
import { tileSize } from './cutOnLine.ts';
import { cutsAtWall, leanOf } from './cutsAtWall.ts';
import { isAslant } from './isAslant.ts';
import { rangeNear } from './rangeNear.ts';
import { direction } from './Scale.ts';

/**
 * The cuts along walls that no axis through the chalk crossing ends at, such as those round the arm of an L, told at the middle of each;
 * none at a wall shorter than a tile, at a curve, and where no piece ends square to the wall.
 *
 * @param told the ends of the axes, at whose walls nothing more is told.
 */
export function wallEnds(surface: PacketSurface, told: readonly AxisEnd[]): readonly AxisEnd[] {
  const names = new Set(told.map(({ edge }) => edge && wallOf(edge)));
  const longest = new Map<string, PacketEdge>();
  for (const edge of surface.edges) {
    const name = wallOf(edge);
    if (names.has(name) || edge.id.includes(':')) continue;
    const before = longest.get(name);
    if (!before || lengthOf(edge) > lengthOf(before)) longest.set(name, edge);
  }
  return [...longest.values()].flatMap((edge) => atMiddle(surface, edge));
}

/** The wall that an edge is of: a doorway parts it in several. */
function wallOf({ id }: PacketEdge): string {
  return id.replace(/\.\d+$/, '');
}

function atMiddle(surface: PacketSurface, edge: PacketEdge): readonly AxisEnd[] {
  const turn = wayOut(edge);
  const towards = direction(turn);
  const axis = towards[0] === 0 ? 1 : 0;
  const sizes = tileSize(surface);
  if (edge.arc || isAslant(edge, towards) || lengthOf(edge) < sizes[1 - axis]!) return [];
  const wall: Point = [(edge.from[0] + edge.to[0]) / 2, (edge.from[1] + edge.to[1]) / 2];
  const cuts = cutsAtWall(surface, edge, wall, towards);
  const first = cuts[0];
  if (!first) return [];
  const others = cuts
    .map(({ size }) => size)
    .filter((size) => Math.abs(size - first.size) > leanOf(edge, axis));
  const other = others.length > 0 ? Math.min(...others) : undefined;
  const near = rangeNear(surface, [edge], towards);
  const ranges = { sizes: near(first.size), ...(other !== undefined && { others: near(other) }) };
  return [{ size: first.size, of: sizes[axis]!, other, ...ranges, wall, edge, turn }];
}

/** The axis that points out of the room across a wall, in degrees; the room lies on the left of its walls. */
function wayOut({ from, to }: PacketEdge): 0 | 90 | 180 | 270 {
  const [dx, dy] = unitAlong(from, to);
  if (Math.abs(dx) > Math.abs(dy)) return dx > 0 ? 270 : 90;
  return dy > 0 ? 0 : 180;
}

function lengthOf({ from, to }: PacketEdge): number {
  return Math.hypot(to[0] - from[0], to[1] - from[1]);
}
