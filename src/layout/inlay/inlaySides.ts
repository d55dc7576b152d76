import { type Point, type Ring, unitAlong } from '../../geometry/index.ts';
import type { InlaySpec } from '../../job/Job.ts';
import type { Ticks } from '../../measure/index.ts';
import type { BorderSide } from '../border/BorderSide.ts';
import type { InlayMark } from './Inlay.ts';

/** One side of an inlay as a setter measures along it. */
export interface InlaySide extends Omit<InlayMark, 'distance'> {
  readonly from: Point;
  readonly to: Point;
  /** The end that the tape begins at. */
  readonly zero: Point;
}

/** The sides of an inlay in the order of its ring, whose first corner is the one near both walls that it is placed from. */
export function inlaySides(
  ring: Ring,
  [first, second]: InlaySpec['from'],
  walls: readonly BorderSide[],
): readonly InlaySide[] {
  const corner = (i: number) => ring[i % 4]!;
  const wall = walls.find((one) => one.wall === first.wall)!;
  const [ux, uy] = unitAlong(wall.from, wall.to);
  const [vx, vy] = unitAlong(corner(0), corner(1));
  // Its first side runs along the first wall or square to it, whichever way round the ring had to be taken.
  const [one, other] = Math.abs(ux * vx + uy * vy) > 0.5 ? [first, second] : [second, first];
  return [one, other, one, other].map(({ wall }, i): InlaySide => {
    // The first two corners stand by the first side's wall, the first and the last by the other's.
    const isNear = i === 0 || i === 3;
    const end = wall === one.wall ? other.wall : one.wall;
    const zero = i < 2 ? corner(i) : corner(i + 1);
    return { wall, far: !isNear, end, from: corner(i), to: corner(i + 1), zero };
  });
}

/** Where a point on an inlay's edge is marked; on a corner of it, on the side that comes first. */
export function markOnSide(sides: readonly InlaySide[], [x, y]: Point): InlayMark {
  const offs = sides.map(({ from, to }) => {
    const [ux, uy] = unitAlong(from, to);
    return Math.abs((x - from[0]) * uy - (y - from[1]) * ux);
  });
  const { wall, far, end, zero } = sides[offs.indexOf(Math.min(...offs))]!;
  const distance: Ticks = Math.round(Math.hypot(x - zero[0], y - zero[1]));
  return { wall, far, end, distance };
}
