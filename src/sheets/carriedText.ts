import type { PacketSurface } from '../packet/Packet.ts';
import { jointFromLine } from './jointFromLine.ts';
import { laidCode } from './laidCode.ts';
import type { SheetContext } from './SheetContext.ts';

/** Which tile joint carries up what bears this number on the base, and what to do where none lies over it; empty for the rest. */
export function carriedText(context: SheetContext, surface: PacketSurface, number: number): string {
  const { packet, say, length } = context;
  const carried = surface.carried?.find((one) => one.number === number);
  if (!carried) return '';
  if (carried.kind === 'none') return say(laidCode(packet, 'sheet.base-sheet.carried.none'));
  return say(laidCode(packet, `sheet.base-sheet.carried.${carried.kind}`), {
    joint: jointFromLine(context, surface, carried),
    away: length(carried.away ?? 0),
  });
}

/** The ways there are to deal with a base that moves where no tile joint lies over it; none for the rest. */
export function carriedAnswers(
  { say }: SheetContext,
  surface: PacketSurface,
  number: number,
): readonly string[] {
  const carried = surface.carried?.find((one) => one.number === number);
  if (!carried || carried.kind === 'over') return [];
  return ['saw', 'move', 'membrane'].map((answer) => say(`sheet.base-sheet.carried.answer.${answer}`));
}
