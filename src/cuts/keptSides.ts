import { distancePointSegment, distancePoints, type Point, type Ring } from '../geometry/index.ts';
import type { Ticks } from '../measure/index.ts';
import type { Cut, CutSize } from './Cut.ts';
import { keepSaw } from './measureFrom.ts';

/** What a saw line leaves of a side of the tile at one of its ends, measured along that side from its corner; ticks. */
export interface KeptSide {
  readonly end: 'left' | 'right' | 'bottom' | 'top';
  readonly exact: Ticks;
  readonly saw: Ticks;
}

/** Ends of saw lines lie this near to the side of the tile, in ticks. */
const NEAR = 8;

/**
 * What is left of the sides of a tile at both ends of the saw line that a size from a point of the tile is measured to. Ends that lie
 * inside the tile, and those that leave nothing which can be marked, are not told.
 *
 * @param ring the whole tile in the cut's axes.
 * @param step saw step in ticks: what is kept is rounded down to it.
 * @example
 * keptSides({ edges: [{ from: [100, 70], to: [0, 70], factory: false }] }, { from: 'bottom' }, [[50, 0], [100, 30], [100, 90], [50, 120], [0, 90], [0, 30]], 10)[0] //=> { end: 'left', exact: 40, saw: 40 }
 */
export function keptSides(
  { edges }: Pick<Cut, 'edges'>,
  { from }: Pick<CutSize, 'from'>,
  ring: Ring,
  step: Ticks,
): readonly KeptSide[] {
  if (from === 'none') return [];
  const axis = from === 'left' || from === 'right' ? 0 : 1;
  const along = axis === 0 ? 1 : 0;
  const up = from === 'left' || from === 'bottom' ? 1 : -1;
  const ends = edges
    .filter((edge) => !edge.factory && !edge.via && facesAway(edge, axis, up))
    .flatMap((edge) => [edge.from, edge.to])
    .sort((a, b) => a[along] - b[along]);
  const names = axis === 0 ? (['bottom', 'top'] as const) : (['left', 'right'] as const);
  return [ends[0], ends.at(-1)].flatMap((end, i) => {
    const exact = end ? keptOf(end, ring, axis, up) : 0;
    const saw = keepSaw(exact, step);
    return saw > 0 ? [{ end: names[i]!, exact, saw }] : [];
  });
}

/** Whether a sawn edge runs across the axis and ends the piece that way; the piece lies on its left. */
function facesAway({ from, to }: Cut['edges'][number], axis: 0 | 1, up: number): boolean {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  return axis === 0 ? Math.abs(dy) > Math.abs(dx) && dy * up > 0 : Math.abs(dx) > Math.abs(dy) && dx * up < 0;
}

/** The longest stretch of a side of the tile from its kept corner to where the saw line ends on it; 0 inside the tile. */
function keptOf(end: Point, ring: Ring, axis: 0 | 1, up: number): Ticks {
  const stretches = ring.flatMap((a, i) => {
    const b = ring[(i + 1) % ring.length]!;
    const kept = (b[axis] - a[axis]) * up > 0 ? a : b;
    return a[axis] !== b[axis] && distancePointSegment(end, a, b) <= NEAR ? distancePoints(kept, end) : [];
  });
  return Math.round(Math.max(0, ...stretches));
}
