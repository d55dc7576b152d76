import type { Ticks } from '../measure/index.ts';
import type { PacketSurface } from '../packet/Packet.ts';
import { edgeWords } from './edgeWords.ts';
import type { SheetContext } from './SheetContext.ts';

/** A tile joint by its place from the chalk line of its axis. */
export interface JointPlace {
  readonly axis?: 'along' | 'across';
  readonly steps?: number;
  readonly distance?: Ticks;
}

/** Which joint it is, in words: how many joints from which chalk line, toward which wall, and how far. */
export function jointFromLine(
  { say, longLength }: SheetContext,
  surface: PacketSurface,
  { axis, steps = 0, distance = 0 }: JointPlace,
): string {
  const line = surface.chalk.lines.find((one) => one.axis === axis)?.name ?? '';
  return say('sheet.base-sheet.carried.joint', {
    line,
    steps: Math.abs(steps),
    distance: longLength(Math.abs(distance)),
    edge: edgeWords(surface, wallOn(surface, axis === 'along' ? 0 : 1, Math.sign(distance)), say),
  });
}

/** The wall that lies farthest on that side. */
function wallOn({ edges }: PacketSurface, axis: 0 | 1, sign: number): string {
  const reach = ({ from, to }: PacketSurface['edges'][number]) => sign * (from[axis] + to[axis]);
  const walls = edges.filter(({ id }) => !id.includes(':'));
  return walls.reduce((best, edge) => (reach(edge) > reach(best) ? edge : best)).id;
}
