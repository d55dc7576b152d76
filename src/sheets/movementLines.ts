import type { PacketSurface } from '../packet/Packet.ts';
import { jointFromLine } from './jointFromLine.ts';
import type { SheetContext } from './SheetContext.ts';

/** A sentence a soft joint: which tile joint it is, how wide and long; and what its width asks of the tile beside it. */
export function movementLines(context: SheetContext, surface: PacketSurface): readonly string[] {
  const { say, length, longLength } = context;
  const lines = surface.movement?.lines ?? [];
  const widest = Math.max(0, ...lines.map(({ width }) => width));
  const more = widest - surface.joint;
  return [
    ...lines.map((line) =>
      say('sheet.set-out.soft', {
        joint: jointFromLine(context, surface, line),
        why: line.why,
        width: length(line.width),
        length: longLength(line.length),
      }),
    ),
    ...(more > 0 ? [say('sheet.set-out.softWider', { more: length(more), half: length(more / 2) })] : []),
  ];
}
