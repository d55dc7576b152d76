import { jointDepth } from '../materials/jointDepth.ts';
import type { Ticks } from '../measure/index.ts';
import type { PacketSurface } from '../packet/Packet.ts';
import { jointBacking } from '../trade/index.ts';
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
        ...backing(context, surface, line.width),
      }),
    ),
    ...(laid ? laidWide(context, surface) : sawnWider(context, surface)),
  ];
}

/** What lies under the sealant of a soft joint this wide, in the depth of this floor. */
function backing({ packet, length }: SheetContext, { pieces }: PacketSurface, width: Ticks) {
  const keys = new Set(pieces.map(({ tile }) => tile));
  const tiles = packet.spec.tiles.filter(({ key }) => keys.has(key));
  const { kind, size } = jointBacking(width, jointDepth(packet.spec, tiles));
  return { backing: kind, size: length(size) };
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
