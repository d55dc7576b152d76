import type { PacketSurface } from '../packet/Packet.ts';
import { jointFromLine } from './jointFromLine.ts';
import type { SheetContext } from './SheetContext.ts';

/** A sentence a soft joint: which tile joint it is, how wide and long; and what a width asks of the tile beside it. */
export function movementLines(context: SheetContext, surface: PacketSurface): readonly string[] {
  const { say, length, longLength } = context;
  const { lines = [], laid = false } = surface.movement ?? {};
  return [
    ...lines.map((line) =>
      say('sheet.set-out.soft', {
        joint: jointFromLine(context, surface, line),
        why: line.why,
        width: length(line.width),
        length: longLength(line.length),
      }),
    ),
    ...(laid ? laidWide(context, surface) : sawnWider(context, surface)),
  ];
}

/** Where tile stands beside soft joints that are laid wide, once for each width. */
function laidWide({ say, length }: SheetContext, { movement, joint, chalk }: PacketSurface): string[] {
  const widths = [...new Set((movement?.lines ?? []).map(({ width }) => width))];
  const poles = (chalk.poles ?? []).filter(({ joints }) => joints.length > 0).length;
  return widths
    .filter((width) => width > joint)
    .map((width) => {
      const more = width - joint;
      const figures = { width: length(width), half: length(width / 2), more: length(more), poles };
      return say('sheet.set-out.softLaid', { ...figures, halfMore: length(more / 2) });
    });
}

/** What to saw off beside the widest where the floor is laid with joints of one width. */
function sawnWider({ say, length }: SheetContext, { movement, joint }: PacketSurface): string[] {
  const more = Math.max(0, ...(movement?.lines ?? []).map(({ width }) => width)) - joint;
  return more > 0 ? [say('sheet.set-out.softWider', { more: length(more), half: length(more / 2) })] : [];
}
