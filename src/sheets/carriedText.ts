import type { PacketSurface } from '../packet/Packet.ts';
import { edgeWords } from './edgeWords.ts';
import type { SheetContext } from './SheetContext.ts';

/** Which tile joint carries up what bears this number on the base, and what to do where none lies over it; empty for the rest. */
export function carriedText(context: SheetContext, surface: PacketSurface, number: number): string {
  const { say, length } = context;
  const carried = surface.carried?.find((one) => one.number === number);
  if (!carried) return '';
  if (carried.kind === 'none') return say('sheet.base-sheet.carried.none');
  return say(`sheet.base-sheet.carried.${carried.kind}`, {
    joint: jointText(context, surface, carried),
    away: length(carried.away ?? 0),
  });
}

function jointText(
  { say, longLength }: SheetContext,
  surface: PacketSurface,
  { axis, steps = 0, distance = 0 }: NonNullable<PacketSurface['carried']>[number],
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
