import type { Point } from '../geometry/index.ts';
import type { Ticks } from '../measure/index.ts';
import type { PacketSurface } from '../packet/Packet.ts';
import { cutsAtWall, type Face, leanOf } from './cutsAtWall.ts';

/** The narrowest and the widest end of some cuts. */
export type CutRange = readonly [least: Ticks, most: Ticks];

/** From what to what pieces along all parts of a wall are sawn that differ from a size by no more than the whole wall leans. */
export function rangeNear(
  surface: PacketSurface,
  parts: readonly Face[],
  towards: Point,
): (size: Ticks) => CutRange {
  const axis = towards[0] === 0 ? 1 : 0;
  const ends = parts.flatMap(({ from, to }) => [from[axis], to[axis]]);
  const lean = Math.max(...ends) - Math.min(...ends) + Math.max(...parts.map((part) => leanOf(part, axis)));
  const cuts = parts.flatMap((part) => cutsAtWall(surface, part, surface.chalk.crossing, towards));
  return (size) => {
    const own = cuts.filter((cut) => Math.abs(cut.size - size) <= lean);
    return [Math.min(size, ...own.map(({ least }) => least)), Math.max(size, ...own.map((cut) => cut.size))];
  };
}
