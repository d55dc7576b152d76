import type { PacketSurface } from '../packet/Packet.ts';
import { suspectText } from './measuring/readingName.ts';
import { remeasureText } from './measuring/remeasureText.ts';
import type { SheetContext } from './SheetContext.ts';

/**
 * What must be measured again before a line is snapped on a floor: readings that the others speak against, and what is out by more
 * than common practice lets stand. None where its readings agree.
 */
export function readAgain(context: SheetContext, { adjustment }: PacketSurface): readonly string[] {
  return [
    ...adjustment.suspects.map((suspect) => suspectText(context, suspect)),
    ...remeasureText(context, adjustment),
  ];
}
