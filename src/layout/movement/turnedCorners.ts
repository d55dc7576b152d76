import type { Point, Ring } from '../../geometry/index.ts';
import { isFold } from '../../room/isFold.ts';
import type { Layout } from '../Layout.ts';

/** A ring that turns by less than this at a point has no corner there: chords of a curve turn by a few degrees. */
const LEAST_TURN = Math.PI / 6;

/** Corners round which the tile turns, where it cracks first: inner corners of the room, sides of doorways, corners of obstacles; of a floor with a border those of its inner edge. */
export function turnedCorners({ frame, border }: Pick<Layout, 'frame' | 'border'>): readonly Point[] {
  const inward = (ring: Ring, sign: 1 | -1) => ring.filter((_, i) => sign * turnAt(ring, i) > LEAST_TURN);
  return [
    ...inward(border ? border.lines.map(({ from }) => from) : frame.outline, -1),
    ...frame.obstacles.filter((one) => !one.circle && !isFold(one)).flatMap(({ ring }) => outerCorners(ring)),
  ];
}

/** Corners of an obstacle that jut out, whichever way its ring goes round. */
function outerCorners(ring: Ring): readonly Point[] {
  const turns = ring.map((_, i) => turnAt(ring, i));
  const way = Math.sign(turns.reduce((sum, turn) => sum + turn, 0));
  return ring.filter((_, i) => way * turns[i]! > LEAST_TURN);
}

/** By how much a ring turns to the left at a point, in radians. */
function turnAt(ring: Ring, i: number): number {
  const [a, b, c] = [ring[(i + ring.length - 1) % ring.length]!, ring[i]!, ring[(i + 1) % ring.length]!];
  const turn = Math.atan2(c[1] - b[1], c[0] - b[0]) - Math.atan2(b[1] - a[1], b[0] - a[0]);
  return Math.atan2(Math.sin(turn), Math.cos(turn));
}
