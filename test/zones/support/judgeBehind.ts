import { type Point, type Ring, whereInRing } from '../../../src/geometry/index.ts';
import type { ZoneToBegin } from './judgeShutOff.ts';

/** How far behind the first piece, in inches, a piece is still reached, and within how many degrees of straight behind it lies. */
export interface Behind {
  readonly by: number;
  readonly degrees: number;
}

const INCH = 8128;

/** The pieces of a zone that lie behind its first, told by the bearing from the middle of the door and by stepping over the floor between, an inch at a time. */
export function judgeBehind(
  { outline, solids, door, own, first }: ZoneToBegin,
  { by, degrees }: Behind,
): readonly string[] {
  const start = own.find(({ id }) => id === first)!.ring;
  const [from, out] = [middle(start), middle(door)];
  const isOpen = (at: Point) =>
    whereInRing(at, outline) !== 'outside' && !solids.some((ring) => whereInRing(at, ring) === 'inside');
  return own.flatMap(({ id, ring }) => {
    const to = middle(ring);
    const deep = start.map((corner) => alongBearing(corner, to, bearing(out, from)));
    const turn = Math.abs(bearing(out, from) - bearing(from, to)) % 360;
    if (Math.min(...deep) <= by * INCH || Math.min(turn, 360 - turn) > degrees) return [];
    const steps = Math.ceil(Math.hypot(to[0] - from[0], to[1] - from[1]) / INCH);
    const between = Array.from(
      { length: steps },
      (_, i): Point => [from[0] + ((to[0] - from[0]) * i) / steps, from[1] + ((to[1] - from[1]) * i) / steps],
    );
    return between.every(isOpen) ? [id] : [];
  });
}

function middle(ring: Ring): Point {
  const [xs, ys] = [ring.map(([x]) => x), ring.map(([, y]) => y)];
  return [(Math.min(...xs) + Math.max(...xs)) / 2, (Math.min(...ys) + Math.max(...ys)) / 2];
}

function bearing(from: Point, to: Point): number {
  return (Math.atan2(to[1] - from[1], to[0] - from[0]) * 180) / Math.PI;
}

/** How far one place lies beyond another in a direction. */
function alongBearing(from: Point, to: Point, degrees: number): number {
  const turn = ((bearing(from, to) - degrees) * Math.PI) / 180;
  return Math.hypot(to[0] - from[0], to[1] - from[1]) * Math.cos(turn);
}
