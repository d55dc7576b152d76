import type { PacketSurface } from '../packet/Packet.ts';
import type { SheetContext } from './SheetContext.ts';

/** What to read where nothing checks the shape of a room: a diagonal, or the walls of a triangle once more; nothing where its readings check each other. */
export function noCheck({ say }: SheetContext, { adjustment }: PacketSurface): readonly string[] {
  const { redundancy, measureNext } = adjustment;
  return redundancy <= 0 ? [say('room.noCheck', { diagonal: measureNext ?? 'none' })] : [];
}
