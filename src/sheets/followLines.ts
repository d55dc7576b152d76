import { sawNearest } from '../measure/index.ts';
import type { PacketSurface } from '../packet/Packet.ts';
import { lineWords } from './lineWords.ts';
import type { SheetContext } from './SheetContext.ts';

/** What to check before lines are snapped that are square to no wall: how they lie to the line that the pattern follows. */
export function followLines({ packet, say, length, number }: SheetContext, surface: PacketSurface): string[] {
  const { pattern } = packet.spec.surfaces.find(({ name }) => name === surface.name) ?? {};
  if (!pattern || typeof pattern.along === 'string') return [];
  if (pattern.along.kind === 'shared')
    return surface.tapers?.ways[0]?.edges.length ? [] : [say('sheet.set-out.sharing')];
  const line = lineWords(surface, pattern.along, say);
  const { beside } = surface.chalk.sight ?? {};
  if (!beside) return [say('sheet.set-out.aslant', { line, turned: `${number(pattern.turnedDeg, 2)}°` })];
  const off = length(sawNearest(beside.off, packet.rounding.step));
  const on = off === length(0) ? 'yes' : 'no';
  return [say('sheet.set-out.along', { line, name: beside.line, off, on })];
}
