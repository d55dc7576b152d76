import type { PacketSurface } from '../packet/Packet.ts';
import { laidCode } from './laidCode.ts';
import type { SheetContext } from './SheetContext.ts';

/** What the crew must know of the base under its tile: that it moves where no tile joint runs; none where joints take it all. */
export function carriedLines(
  { packet, say }: SheetContext,
  { carried = [] }: PacketSurface,
): readonly string[] {
  const count = carried.filter(({ kind }) => kind === 'none').length;
  return count > 0 ? [say(laidCode(packet, 'sheet.layout-plan.carried'), { count })] : [];
}
