import type { Point, Ring } from '../geometry/index.ts';
import type { Corner } from './straighten.ts';
import type { OwnPiece } from './TileBox.ts';

/** A circle is drawn as a polygon within a tick of it, and cut by edges that are rounded again. */
const ON_CIRCLE = 6;

/**
 * The corners of a ring with each run of short edges along a circle drawn together to one arc.
 *
 * @returns corners in the order of the ring; a corner from which an arc leads on carries the index of its circle.
 */
export function arcsOf(ring: Ring, circles: OwnPiece['circles']): Corner[] {
  if (circles.length === 0) return ring.map((at) => ({ at }));
  const arcs = ring.map((from, i) => arcAlong(from, ring[(i + 1) % ring.length]!, circles));
  return ring.flatMap((at, i): Corner[] => {
    const before = arcs[(i + ring.length - 1) % ring.length];
    const arc = arcs[i];
    if (arc === undefined) return [{ at }];
    return before === arc ? [] : [{ at, arc }];
  });
}

/** Whether all of a ring runs along one circle, and which. */
export function circleOf(ring: Ring, circles: OwnPiece['circles']): number | undefined {
  const first = arcAlong(ring[0]!, ring[1]!, circles);
  const whole = ring.every((from, i) => arcAlong(from, ring[(i + 1) % ring.length]!, circles) === first);
  return whole ? first : undefined;
}

function arcAlong(from: Point, to: Point, circles: OwnPiece['circles']): number | undefined {
  const middle: Point = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
  const found = circles.findIndex(({ centre, radius }) =>
    [from, middle, to].every(
      ([x, y]) => Math.abs(Math.hypot(x - centre[0], y - centre[1]) - radius) <= ON_CIRCLE,
    ),
  );
  return found < 0 ? undefined : found;
}
