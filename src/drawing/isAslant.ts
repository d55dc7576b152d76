import type { Point } from '../geometry/index.ts';
import type { PacketEdge } from '../packet/Packet.ts';

/** A wall that leans by more than this from square, as a sine, cuts its tiles aslant: where the line ends tells no size of a cut. */
const aslant = 0.2;

/** Whether a way out of the room meets a wall aslant. */
export function isAslant(edge: PacketEdge | undefined, towards: Point): boolean {
  if (!edge || edge.arc) return false;
  const [dx, dy] = [edge.to[0] - edge.from[0], edge.to[1] - edge.from[1]];
  return Math.abs(dx * towards[0] + dy * towards[1]) > aslant * Math.hypot(dx, dy);
}
