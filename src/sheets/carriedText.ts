import type { PacketSurface } from '../packet/Packet.ts';
import { jointFromLine } from './jointFromLine.ts';
import type { SheetContext } from './SheetContext.ts';

/** Which tile joint carries up what bears this number on the base, and what to do where none lies over it; empty for the rest. */
export function carriedText(context: SheetContext, surface: PacketSurface, number: number): string {
  const { say, length } = context;
  const carried = surface.carried?.find((one) => one.number === number);
  if (!carried) return '';
  if (carried.kind === 'none') return say('sheet.base-sheet.carried.none');
  return say(`sheet.base-sheet.carried.${carried.kind}`, {
    joint: jointFromLine(context, surface, carried),
    away: length(carried.away ?? 0),
  });
}
